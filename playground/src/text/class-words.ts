import { byLanguage } from "./by-language.js";
import { classPage as english } from "./english/class-page.js";
import { classPage as spanish } from "./spanish/class-page.js";

/** Words of the page of lessons, in the language that holds. */
export const classWords = byLanguage(english, spanish);
