/** Lower case without accents, every run of other characters one blank. @example normalText("T. Máx (°C)") // "t max c" */
export const normalText = (text: string): string =>
  text
    .slice(0, 200)
    .replace(/[\u00b0\u00ba\u00aa]/g, " ")
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/\u00df/g, "ss")
    .replace(/[^a-z0-9%#]+/g, " ")
    .trim();
