import { byLanguage } from "./by-language.js";
import { amount, listed, whole } from "./number-format.js";
import { depthText, unitText, waterText } from "./quantity.js";

const english = {
  air: (soil: string): string => `${soil}: how long the roots lack air after a run`,
  none: (letter: string): string => `${letter}: hardly any root loses its air.`,
  back: (letter: string, hours: number, most: number): string =>
    `${letter}: air is back ${amount(hours, 2)} h after the last closing of a run (median; longest ${whole(most)} h).`,
  never: (letter: string): string => `${letter}: air is never back before the next opening.`,
  gapShort: (gap: string): string =>
    `The pause of ${gap} between pulses is shorter than that: they add up to one long run.`,
  gapEnough: (gap: string): string => `The pause of ${gap} between pulses is enough.`,
  gapUsually: (gap: string): string => `The pause of ${gap} between pulses is enough after some of them only.`,
  borrowed: (early: number, all: number): string =>
    `After ${whole(early)} of ${whole(all)} openings the next one comes before air is back.`,
  depths: (soil: string): string => `${soil}: the same hours by depth`,
  band: (from: number, to: number): string =>
    Number.isFinite(to) ? `${amount(from)}–${amount(to)} cm` : `below ${amount(from)} cm`,
  depthTable: (soil: string): string => `${soil}: root-hours by depth, h`,
  depth: "Depth",
  daily: (wanted: readonly number[], given: readonly number[], lost: readonly number[]): string =>
    `In these days the tree wanted ${waterText(wanted[0] ?? 0)}; it was given ${listed(given.map((l) => waterText(l)))}; ${listed(lost.map((l) => waterText(l)))} left below the roots`,
  dailySummary: (programme: string, wanted: number, given: number, lost: number): string =>
    `Litres by day under ${programme}: ${waterText(wanted)} wanted, ${waterText(given)} given, rain apart, ${waterText(lost)} below the roots.`,
  wanted: "wanted",
  given: "given",
  lost: "below roots",
  dailyKey: "line: wanted; bar: given; falling: below the roots",
  dailyTable: (): string => `${unitText("water")} per tree and day`,
  day: "Day",
  calendar: (starts: readonly number[]): string =>
    `The season's openings, one square a day: ${listed(starts.map(whole))} in all`,
  calendarSummary: (programme: string, days: number, all: number, starts: number, hours: number): string =>
    `Season of ${programme}: water on ${whole(days)} of ${whole(all)} days, ${whole(starts)} openings, ${whole(hours)} h of open valve.`,
  calendarKey:
    "Filled as far as the valve was open, the longest day full; weeks go down, Monday first; the dot is the day shown.",
  calendarTable: "Openings and minutes of open valve by week",
  week: "Week from",
  openings: "openings",
  minutes: "min",
  window: (soils: readonly string[], lends: readonly number[], wanted: number): string =>
    `Between its limits ${listed(soils.map((soil, i) => `${soil.toLowerCase()} lends ${depthText(lends[i]!)}`))}; the tree wants ${waterText(wanted)} this day`,
  windowNote: "Same width, so height is litres. Dotted end: roots cannot pull. Hatched end: no air.",
  regains: (soil: string, hours: string): string => `${soil} regains its air ${hours} after a run of A.`,
  regainsNone: (soil: string): string => `${soil} keeps its air under A.`,
  regainsNever: (soil: string): string => `${soil} never regains its air before the next run of A.`,
  windowTable: "What each soil lends between its limits, and how long air takes to come back",
  soil: "Soil",
  lendsMm: (): string => unitText("depth"),
  lendsL: (): string => `${unitText("water")} per tree`,
  hoursToAir: "h to air",
  trees: "The same lines, three trees",
  treesWhat:
    "Lines that drain give the tree at their low end what is left in them after every closing; the tree of the lowest quarter gets less at every emitter.",
  treesRunning: (done: number, all: number): string => `Computed ${whole(done)} of ${whole(all)} runs`,
  treesFailed: "The trees could not be computed",
  treesTable: (soil: string): string => `${soil}: over the season`,
  tree: "Tree",
  treeNames: { "under-fed": "lowest quarter", mean: "average", "over-fed": "low end of the line" },
  gets: (): string => `gets, ${unitText("water")}`,
  thirsty: "thirsty, h",
  airless: "airless, h",
  below: (): string => `below roots, ${unitText("water")}`,
  treesFinding: (soil: string, letter: string, more: number, airless: number): string =>
    `${soil}, ${letter}: the low end gets ${waterText(more)} more than the average tree and lacks air ${whole(Math.abs(airless))} h ${airless >= 0 ? "more" : "less"}.`,
  treesChange: (soil: string, from: string, to: string, mean: number, low: number): string =>
    `${soil}, from ${from} to ${to} airless hours change by ${signed(mean)} on the average tree, by ${signed(low)} at the low end.`,
  salt: (soil: string): string => `${soil}: salt in the soil's water extract (ECe) over the season`,
  saltSummary: (letter: string, start: string, end: string): string => `${letter}: from ${start} to ${end}`,
  saltTable: "ECe of the root zone at the end of each week",
};

const signed = (value: number): string => `${value < 0 ? "−" : "+"}${whole(Math.abs(value))} h`;

const spanish: typeof english = {
  air: (soil) => `${soil}: cuánto tiempo les falta aire a las raíces tras un riego`,
  none: (letter) => `${letter}: casi ninguna raíz pierde su aire.`,
  back: (letter, hours, most) =>
    `${letter}: el aire vuelve ${amount(hours, 2)} h después del último cierre de un riego (mediana; lo más largo ${whole(most)} h).`,
  never: (letter) => `${letter}: el aire nunca vuelve antes de la apertura siguiente.`,
  gapShort: (gap) => `La pausa de ${gap} entre pulsos es más corta: se suman en un solo riego largo.`,
  gapEnough: (gap) => `La pausa de ${gap} entre pulsos basta.`,
  gapUsually: (gap) => `La pausa de ${gap} entre pulsos basta solo después de algunos.`,
  borrowed: (early, all) =>
    `Tras ${whole(early)} de ${whole(all)} aperturas la siguiente llega antes de que vuelva el aire.`,
  depths: (soil) => `${soil}: las mismas horas por profundidad`,
  band: (from, to) => (Number.isFinite(to) ? `${amount(from)}–${amount(to)} cm` : `bajo ${amount(from)} cm`),
  depthTable: (soil) => `${soil}: horas de raíz por profundidad, h`,
  depth: "Profundidad",
  daily: (wanted, given, lost) =>
    `En estos días el árbol quiso ${waterText(wanted[0] ?? 0)}; recibió ${listed(given.map((l) => waterText(l)))}; ${listed(lost.map((l) => waterText(l)))} salieron bajo las raíces`,
  dailySummary: (programme, wanted, given, lost) =>
    `Litros por día con ${programme}: ${waterText(wanted)} queridos, ${waterText(given)} dados sin contar la lluvia, ${waterText(lost)} bajo las raíces.`,
  wanted: "querido",
  given: "dado",
  lost: "bajo raíces",
  dailyKey: "línea: querido; barra: dado; lo que cae: bajo las raíces",
  dailyTable: (): string => `${unitText("water")} por árbol y día`,
  day: "Día",
  calendar: (starts) => `Las aperturas de la temporada, un cuadro por día: ${listed(starts.map(whole))} en total`,
  calendarSummary: (programme, days, all, starts, hours) =>
    `Temporada de ${programme}: agua en ${whole(days)} de ${whole(all)} días, ${whole(starts)} aperturas, ${whole(hours)} h de válvula abierta.`,
  calendarKey:
    "Lleno según el tiempo de válvula abierta, el día más largo entero; las semanas van hacia abajo, primero el lunes; el punto es el día mostrado.",
  calendarTable: "Aperturas y minutos de válvula abierta por semana",
  week: "Semana del",
  openings: "aperturas",
  minutes: "min",
  window: (soils, lends, wanted) =>
    `Entre sus límites ${listed(soils.map((soil, i) => `${soil.toLowerCase()} presta ${depthText(lends[i]!)}`))}; el árbol quiere ${waterText(wanted)} este día`,
  windowNote:
    "Mismo ancho, así que la altura son litros. Extremo punteado: las raíces no pueden extraer. Extremo rayado: sin aire.",
  regains: (soil, hours) => `${soil} recobra su aire ${hours} después de un riego de A.`,
  regainsNone: (soil) => `${soil} conserva su aire con A.`,
  regainsNever: (soil) => `${soil} no recobra su aire antes del riego siguiente de A.`,
  windowTable: "Lo que presta cada suelo entre sus límites, y cuánto tarda el aire en volver",
  soil: "Suelo",
  lendsMm: (): string => unitText("depth"),
  lendsL: (): string => `${unitText("water")} por árbol`,
  hoursToAir: "h hasta el aire",
  trees: "Las mismas líneas, tres árboles",
  treesWhat:
    "Las líneas que se vacían dan al árbol de su extremo bajo lo que queda en ellas tras cada cierre; el árbol del cuarto inferior recibe menos en cada emisor.",
  treesRunning: (done, all) => `Calculados ${whole(done)} de ${whole(all)}`,
  treesFailed: "No se pudieron calcular los árboles",
  treesTable: (soil) => `${soil}: en la temporada`,
  tree: "Árbol",
  treeNames: { "under-fed": "cuarto inferior", mean: "medio", "over-fed": "extremo bajo de la línea" },
  gets: (): string => `recibe, ${unitText("water")}`,
  thirsty: "con sed, h",
  airless: "sin aire, h",
  below: (): string => `bajo raíces, ${unitText("water")}`,
  treesFinding: (soil, letter, more, airless) =>
    `${soil}, ${letter}: el extremo bajo recibe ${waterText(more)} más que el árbol medio y le falta aire ${whole(Math.abs(airless))} h ${airless >= 0 ? "más" : "menos"}.`,
  treesChange: (soil, from, to, mean, low) =>
    `${soil}, de ${from} a ${to} las horas sin aire cambian ${signed(mean)} en el árbol medio, ${signed(low)} en el extremo bajo.`,
  salt: (soil) => `${soil}: sal en el extracto de saturación (CEe) durante la temporada`,
  saltSummary: (letter, start, end) => `${letter}: de ${start} a ${end}`,
  saltTable: "CEe de la zona de raíces al final de cada semana",
};

/** Words of the pictures further down a soil's row, in the language that holds. */
export const soilMoreWords = byLanguage(english, spanish);
