import type { draws as english } from "../english/draws.js";
import { amount, signedAmount } from "../number-format.js";
import { measured, measuredUnit } from "../quantity.js";
import { measures, units } from "./terms.js";

const unitText = (unit: string): string => measuredUnit(unit, units);
const signed = (value: number, unit: string): string => signedAmount(measured(value, unit));
const verdicts = { rises: "sube", falls: "baja", "no clear difference": "sin diferencia clara" };

export const draws: typeof english = {
  heading: "Sortear lo que no se sabe",
  start: "Sortear lo que no se sabe",
  again: "Sortear otra vez",
  what: "Cien veces se sortean raíces, límites, suelo, coeficiente y emisores en torno a lo que usted dijo, igual para todos los programas.",
  cancel: "Parar el sorteo",
  running: (done, all) => `${done} de ${all} sorteos`,
  stopped: "Parado. Se muestra lo sorteado.",
  failed: "El sorteo acabó antes de tiempo",
  stale: "De antes de su cambio; sortee otra vez.",
  took: (finished, failed, seconds) =>
    `${finished} sorteos en ${amount(seconds, 2)} s${failed > 0 ? `; ${failed} fallaron y se dejan fuera` : ""}.`,
  badge: (badge, held, all) => `${badge}: en ${held} de ${all} sorteos`,
  title: (soil, clear, all, drawn) =>
    `${soil}: ${clear === 0 ? "sin diferencia clara" : `diferencia clara en ${clear} de ${all} cifras`}, ${drawn === undefined ? "con un cálculo de cada uno" : `en ${drawn} sorteos`}`,
  key: "Postes de trazos: el margen, por debajo del cual no se afirma nada. Hueco: sin diferencia clara. Barra: nueve sorteos de diez.",
  pair: (from, to) => `De ${from} a ${to}`,
  less: "menos",
  more: "más",
  zero: "sin diferencia",
  rowLabel: ({ measureId, unit, value, band, floor }) => [
    `${measures[measureId] ?? measureId}: ${signed(value, unit)} ${unitText(unit)}`,
    `${band ? ` (de ${signed(band.low, unit)} a ${signed(band.high, unit)})` : ""}, margen ${amount(measured(floor, unit))}`,
  ],
  rowSummary: ({ measureId, unit, value, band, floor, verdict }) =>
    `${measures[measureId] ?? measureId}: ${signed(value, unit)} ${unitText(unit)}${band ? `, de ${signed(band.low, unit)} a ${signed(band.high, unit)} en nueve sorteos de diez` : ""}; margen ${amount(measured(floor, unit))}: ${verdicts[verdict]}.`,
  measure: "Medida",
  low: "5 %",
  middle: "mediana o cálculo",
  high: "95 %",
  floor: "margen",
  verdict: "juicio",
  verdicts,
};
