import { byLanguage } from "./by-language.js";
import { blockPage as english } from "./english/block-page.js";
import { blockPage as spanish } from "./spanish/block-page.js";

/** Words of the block's page, in the language that holds. */
export const blockWords = byLanguage(english, spanish);
