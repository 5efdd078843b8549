export { adviceEnglish } from "./advice-english.js";
export { adviceSpanish } from "./advice-spanish.js";
export { type AdviceFormat, causeText, clockText } from "./advice-text.js";
export type { AdviceWords } from "./advice-words.js";
export { sheetEnglish } from "./sheet-english.js";
export { sheetHtml, sheetPlain } from "./sheet-page.js";
export { sheetSpanish } from "./sheet-spanish.js";
export { type SheetFormat, type SheetText, sheetText } from "./sheet-text.js";
export type { SheetWords } from "./sheet-words.js";
