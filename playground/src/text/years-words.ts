import { byLanguage } from "./by-language.js";
import { amount } from "./number-format.js";
import { unitText, waterText } from "./quantity.js";

const english = {
  title: (openNow: number, all: number, age: number, when: string): string =>
    `The years ahead: with ${amount(openNow)} of ${amount(all)} emitters open now, open more at the age of ${amount(age, 2)} years, ${when}`,
  full: "The years ahead: all emitters may be open",
  tooMany: (openNow: number, enough: number): string =>
    `The years ahead: ${amount(openNow)} emitters are open now; at this age ${amount(enough)} would do`,
  what: (): string =>
    `Bars: ${unitText("water")} a tree and day; below them the age, and how many emitters are open of all. Roots are taken as wide as the canopy, an emitter as useful once its wetted circle touches them; dig before you open more.`,
  age: "Age of the trees now, years",
  et0: "ET0, mm a day",
  summary: (parts: readonly string[]): string => `Litres a day and open emitters by age: ${parts.join("; ")}.`,
  part: (age: number, litres: number, open: number): string =>
    `year ${amount(age)}: ${waterText(litres)}, ${amount(open)} open`,
  years: "years",
  table: "By age of the tree",
  head: (): readonly string[] => [
    "Age, years",
    "Canopy, m",
    `${unitText("water")} a day, gross`,
    "Open emitters",
    "Of the water on roots, %",
    "Hours a day",
  ],
  open: (open: number, all: number): string => `${amount(open)}/${amount(all)}`,
};

const spanish: typeof english = {
  title: (openNow, all, age, when) =>
    `Los años que vienen: con ${amount(openNow)} de ${amount(all)} emisores abiertos hoy, abra más a la edad de ${amount(age, 2)} años, ${when}`,
  full: "Los años que vienen: todos los emisores pueden estar abiertos",
  tooMany: (openNow, enough) =>
    `Los años que vienen: hay ${amount(openNow)} emisores abiertos hoy; a esta edad bastan ${amount(enough)}`,
  what: () =>
    `Barras: ${unitText("water")} por árbol y día; debajo la edad, y cuántos emisores están abiertos de todos. Las raíces se toman tan anchas como la copa, y un emisor como útil cuando su círculo mojado las toca; cave antes de abrir más.`,
  age: "Edad de los árboles hoy, años",
  et0: "ET0, mm al día",
  summary: (parts) => `Litros al día y emisores abiertos por edad: ${parts.join("; ")}.`,
  part: (age, litres, open) => `año ${amount(age)}: ${waterText(litres)}, ${amount(open)} abiertos`,
  years: "años",
  table: "Por edad del árbol",
  head: (): readonly string[] => [
    "Edad, años",
    "Copa, m",
    `${unitText("water")} al día, brutos`,
    "Emisores abiertos",
    "Del agua sobre raíces, %",
    "Horas al día",
  ],
  open: (open, all) => `${amount(open)}/${amount(all)}`,
};

/** Words of the plan over years, in the language that holds. */
export const yearsWords = byLanguage(english, spanish);
