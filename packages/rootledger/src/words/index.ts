export { sheetEnglish } from "./sheet-english.js";
export { sheetHtml, sheetPlain } from "./sheet-page.js";
export { sheetSpanish } from "./sheet-spanish.js";
export { type SheetFormat, type SheetText, sheetText } from "./sheet-text.js";
export type { SheetWords } from "./sheet-words.js";
