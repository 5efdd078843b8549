import { byLanguage } from "./by-language.js";
import { dataWords as english } from "./english/data-words.js";
import { dataWords as spanish } from "./spanish/data-words.js";

/** Words for files that come in and go out, in the language that holds. */
export const dataWords = byLanguage(english, spanish);
