import { locale } from "./locale.js";

/** Words that a page brings along, in the language that holds when they are read. @example byLanguage(english, spanish)().title */
export const byLanguage =
  <T>(english: T, spanish: T): (() => T) =>
  () =>
    locale.startsWith("es") ? spanish : english;
