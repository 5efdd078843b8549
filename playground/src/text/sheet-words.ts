import { byLanguage } from "./by-language.js";
import { sheetPage as english } from "./english/sheet-page.js";
import { sheetPage as spanish } from "./spanish/sheet-page.js";

/** Words of the grower's sheet, in the language that holds. */
export const sheetWords = byLanguage(english, spanish);
