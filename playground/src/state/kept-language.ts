import { type Language, languages } from "../text/locale.js";

const key = "rootledger.language";

/** Language chosen on this device before, else the device's own, else English. Storage may be forbidden. */
export function keptLanguage(): Language {
  for (const wanted of [stored(), navigator.language.slice(0, 2)]) {
    const known = languages.find((language) => language === wanted);
    if (known) return known;
  }
  return "en";
}

export function keepLanguage(language: Language): void {
  try {
    localStorage.setItem(key, language);
  } catch {
    // Without storage the choice holds until the page is closed, and in its link.
  }
}

function stored(): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}
