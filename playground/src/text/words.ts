import { english, type Words } from "./english.js";
import { type Language, useLocaleOf } from "./locale.js";
import { forgetFormats } from "./number-format.js";

/** Every word on the page, in the language that was set last; read at every drawing. */
export let words: Words = english;

const known = new Map<Language, Words>([["en", english]]);

/** Whether the words of a language are here. */
export const languageIsHere = (language: Language): boolean => known.has(language);

/** Brings the words of a language; where they cannot be fetched, the words that are here stand in for them. */
export async function fetchLanguage(language: Language): Promise<void> {
  if (known.has(language)) return;
  const found = await import("./spanish.js").then(
    ({ spanish }) => spanish,
    () => english,
  );
  known.set(language, found);
}

/** Sets a language whose words are here. */
export function setLanguage(language: Language): void {
  words = known.get(language) ?? english;
  useLocaleOf(words === english ? "en" : language);
  forgetFormats();
}
