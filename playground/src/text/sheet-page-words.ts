import { byLanguage } from "./by-language.js";

const english = {
  heading: "Sheet for the grower",
  print: "Print this half page",
  computing: "Computing the sheet with its bands, from twenty draws of what is unknown",
  refining: (members: number, all: number): string =>
    `The bands rest on ${members} draws so far; ${all} are coming, then it can be printed.`,
  keep: "Keep it on this device",
  kept: "Kept. It stays here when the link is opened again, whatever the weather has become.",
  noRoom: "The device has no room to keep it.",
  earlier: "Sheets given out before",
  reopen: "the scene it was made of",
  failed: "This sheet could not be made",
  noRun:
    "No run of this programme falls into the two weeks from that day, or the season ends before. Choose an earlier day on Compare or Section, or another programme.",
  soil: "Soil",
  programme: "Programme",
  from: (day: string): string => `From ${day} on, the day that the other pages show.`,
  name: (soil: string, programme: string): string => `${soil}, ${programme}`,
};

const spanish: typeof english = {
  heading: "Hoja para el productor",
  print: "Imprimir esta media página",
  computing: "Calculando la hoja con sus márgenes, con veinte sorteos de lo que no se sabe",
  refining: (members, all) =>
    `Los márgenes descansan en ${members} sorteos por ahora; vienen ${all}, y entonces se puede imprimir.`,
  keep: "Guardarla en este aparato",
  kept: "Guardada. Sigue aquí cuando se vuelva a abrir el enlace, sea cual sea el tiempo que haya hecho.",
  noRoom: "El aparato no tiene lugar para guardarla.",
  earlier: "Hojas entregadas antes",
  reopen: "la escena con que se hizo",
  failed: "No se pudo hacer esta hoja",
  noRun:
    "Ningún riego de este programa cae en las dos semanas desde ese día, o la temporada acaba antes. Elija un día anterior en Comparar o Corte, u otro programa.",
  soil: "Suelo",
  programme: "Programa",
  from: (day) => `Desde el ${day}, el día que muestran las otras páginas.`,
  name: (soil, programme) => `${soil}, ${programme}`,
};

/** Words round the grower's sheet, whose own words are the library's. */
export const sheetPageWords = byLanguage(english, spanish);
