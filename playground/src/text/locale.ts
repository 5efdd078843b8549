/** Languages of the page, and the place whose number and date habits each follows. */
export const languages = ["en", "es"] as const;
export type Language = (typeof languages)[number];

const locales: Readonly<Record<Language, string>> = { en: "en-GB", es: "es-ES" };

/** Language of words, numbers and dates on screen; set by `setLanguage` alone. */
export let locale = locales.en;

export function useLocaleOf(language: Language): void {
  locale = locales[language];
}
