import { byLanguage } from "./by-language.js";

const english = {
  heading: "Sheet for the grower",
  print: "Print this half page",
  computing: "Computing the sheet with its bands, from twenty draws of what is unknown",
  failed: "This sheet could not be made",
  soil: "Soil",
  programme: "Programme",
  from: (day: string): string => `From ${day} on, the day that the other pages show.`,
  name: (soil: string, programme: string): string => `${soil}, ${programme}`,
};

const spanish: typeof english = {
  heading: "Hoja para el productor",
  print: "Imprimir esta media página",
  computing: "Calculando la hoja con sus márgenes, con veinte sorteos de lo que no se sabe",
  failed: "No se pudo hacer esta hoja",
  soil: "Suelo",
  programme: "Programa",
  from: (day) => `Desde el ${day}, el día que muestran las otras páginas.`,
  name: (soil, programme) => `${soil}, ${programme}`,
};

/** Words round the grower's sheet, whose own words are the library's. */
export const sheetPageWords = byLanguage(english, spanish);
