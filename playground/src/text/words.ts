import { english, type Words } from "./english.js";
import { type Language, useLocaleOf } from "./locale.js";
import { forgetFormats } from "./number-format.js";
import { spanish } from "./spanish.js";

/** Every word on the page, in the language that was set last; read at every drawing. */
export let words: Words = english;

export function setLanguage(language: Language): void {
  words = language === "es" ? spanish : english;
  useLocaleOf(language);
  forgetFormats();
}
