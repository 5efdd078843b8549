import type { CutReason } from "rootledger/programme";
import type { CropName, RuleName } from "../state/scene.js";
import { byLanguage } from "./by-language.js";
import { amount, percent, whole } from "./number-format.js";
import { depthText, unitText, waterText } from "./quantity.js";

const english = {
  rule: "What decides",
  rules: {
    calendar: "the calendar",
    "replace-use": "gives back what was used",
    depletion: "runs when the available water falls",
    tension: "runs when a sensor is dry",
  } satisfies Readonly<Record<RuleName, string>>,
  ruleNote: "A rule looks at the soil of the average tree at the hour of the first opening.",
  depletion: "Runs above this share of the available water gone, %",
  tension: (): string => `Runs above, ${unitText("tension")}`,
  depth: "Depth of the sensor, cm",
  again: "and again at",
  never: "no second time",
  lines: "Lines",
  blockLines: (count: number): string => `the block's ${amount(count)}`,
  linesNote: "Other lines are reckoned with roots that have grown along them; that takes a season or more.",
  et0: "ET0, mm a day",
  ofWeather: (day: string): string => `from the weather of ${day}`,
  crop: "Crop",
  crops: { avocado: "avocado", citrus: "citrus", blueberry: "blueberry", strawberry: "strawberry" } satisfies Readonly<
    Record<CropName, string>
  >,
  kc: "Kc",
  kcFrom: (source: string): string => `Kc: ${source}`,
  kcTyped: "Kc: yours",
  efficiency: "Of the water, used %",
  net: (net: number, gross: number, share: number): string =>
    `${waterText(net)} a tree net, ${waterText(gross)} gross at ${percent(share)}`,
  needAlso: (mm: number, m3: string): string => `${depthText(mm)} on all ground, ${m3} gross a day.`,
  right: (letter: string, litres: number): string =>
    `${letter} brings ${waterText(litres)} a day: the amount is right; the question is timing and place.`,
  off: (letter: string, litres: number, share: number): string =>
    `${letter} brings ${waterText(litres)} a day: ${percent(Math.abs(share))} ${share > 0 ? "more than" : "less than"} the gross need.`,
  decided: (letter: string): string => `${letter} decides from the soil how much.`,
  model: (kcb: string): string => `The pictures take the day's own ET0 with a Kcb of ${kcb}, bare soil apart.`,
  powerFrom: "Cheap power from",
  powerTo: "to",
  same: "no cheap hours",
  keep: "Cut runs to those hours",
  skip: "No run after rain of, mm (0: never mind rain)",
  longest: "Longest run, minutes (0: none)",
  dear: (letter: string, hours: string, of: string, window: string): string =>
    `${letter}: ${hours} of ${of} fall outside cheap power (${window}), in the dear tariff.`,
  cheap: (letter: string): string => `${letter}: all of it on cheap power.`,
  unknownHours: (letter: string): string => `${letter}: the rule decides; see the cuts.`,
  cuts: (letter: string, soil: string, asked: string, given: string): string =>
    `${letter} on ${soil}: asked ${asked}, given ${given} of open valve`,
  cut: (reason: CutReason, runs: number, hours: string): string =>
    `${english.reasons[reason]} ${whole(runs)} ${runs === 1 ? "time" : "times"}, ${hours}`,
  uncut: "nothing cut",
  reasons: {
    rain: "rain",
    "longest-run": "longest run",
    "pump-hours": "pump hours",
    allocation: "allocation",
    "allowed-hours": "outside allowed hours",
    "shortest-pulse": "pulse too short",
    overlap: "run before still on",
    "fewer-pulses": "fewer pulses",
  } satisfies Readonly<Record<CutReason, string>>,
  waiting: "Cuts are counted when the season has been computed.",
};

const spanish: typeof english = {
  rule: "Qué decide",
  rules: {
    calendar: "el calendario",
    "replace-use": "repone lo usado",
    depletion: "riega cuando baja el agua disponible",
    tension: "riega cuando un sensor está seco",
  },
  ruleNote: "Una regla mira el suelo del árbol medio a la hora de la primera apertura.",
  depletion: "Riega si falta más de esta parte del agua disponible, %",
  tension: (): string => `Riega por encima de, ${unitText("tension")}`,
  depth: "Profundidad del sensor, cm",
  again: "y otra vez a las",
  never: "ninguna segunda vez",
  lines: "Líneas",
  blockLines: (count) => `las ${amount(count)} del bloque`,
  linesNote: "Otras líneas se calculan con raíces que ya crecieron a lo largo de ellas; eso tarda una temporada o más.",
  et0: "ET0, mm al día",
  ofWeather: (day) => `del tiempo del ${day}`,
  crop: "Cultivo",
  crops: { avocado: "palto o aguacate", citrus: "cítricos", blueberry: "arándano", strawberry: "fresa" },
  kc: "Kc",
  kcFrom: (source) => `Kc: ${source}`,
  kcTyped: "Kc: el suyo",
  efficiency: "Del agua, se usa %",
  net: (net, gross, share) => `${waterText(net)} por árbol netos, ${waterText(gross)} brutos al ${percent(share)}`,
  needAlso: (mm, m3) => `${depthText(mm)} sobre todo el suelo, ${m3} brutos al día.`,
  right: (letter, litres) =>
    `${letter} da ${waterText(litres)} al día: la cantidad es correcta; la pregunta es cuándo y dónde.`,
  off: (letter, litres, share) =>
    `${letter} da ${waterText(litres)} al día: ${percent(Math.abs(share))} ${share > 0 ? "más" : "menos"} que la necesidad bruta.`,
  decided: (letter) => `${letter} decide según el suelo cuánto da.`,
  model: (kcb) => `Las figuras toman la ET0 de cada día con un Kcb de ${kcb}, sin el suelo desnudo.`,
  powerFrom: "Energía barata de las",
  powerTo: "a las",
  same: "sin horas baratas",
  keep: "Cortar los riegos a esas horas",
  skip: "Ningún riego tras una lluvia de, mm (0: no importa)",
  longest: "Riego más largo, minutos (0: ninguno)",
  dear: (letter, hours, of, window) =>
    `${letter}: ${hours} de ${of} caen fuera de la energía barata (${window}), en la tarifa cara.`,
  cheap: (letter) => `${letter}: todo con energía barata.`,
  unknownHours: (letter) => `${letter}: decide la regla; véanse los cortes.`,
  cuts: (letter, soil, asked, given) => `${letter} en ${soil}: pidió ${asked}, recibió ${given} de válvula abierta`,
  cut: (reason, runs, hours) => `${spanish.reasons[reason]} ${whole(runs)} ${runs === 1 ? "vez" : "veces"}, ${hours}`,
  uncut: "nada cortado",
  reasons: {
    rain: "lluvia",
    "longest-run": "riego más largo",
    "pump-hours": "horas de bomba",
    allocation: "dotación",
    "allowed-hours": "fuera de las horas permitidas",
    "shortest-pulse": "pulso demasiado corto",
    overlap: "el riego anterior seguía",
    "fewer-pulses": "menos pulsos",
  },
  waiting: "Los cortes se cuentan cuando la temporada está calculada.",
};

/** Words of the tools beside the programmes, in the language that holds. */
export const toolsWords = byLanguage(english, spanish);
