import { byLanguage } from "./by-language.js";
import { sectionPage as english } from "./english/section-page.js";
import { sectionPage as spanish } from "./spanish/section-page.js";

/** Words of the section's page, in the language that holds. */
export const sectionWords = byLanguage(english, spanish);
