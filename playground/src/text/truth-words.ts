import { byLanguage } from "./by-language.js";
import { truthPage as english } from "./english/truth-page.js";
import { truthPage as spanish } from "./spanish/truth-page.js";

/** Words of the page of published checks, in the language that holds. */
export const truthWords = byLanguage(english, spanish);
