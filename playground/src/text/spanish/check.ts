import type { check as english } from "../english/check.js";
import { amount } from "../number-format.js";
import { depthText } from "../quantity.js";

export const check: typeof english = {
  heading: "Comprobar con la física",
  start: (days) => `Comprobar ${days} con la física`,
  again: "Comprobar otra vez",
  what: "Ecuación de Richards en celdas más finas, desde el mismo suelo el primer día. Es lenta: corre aparte y la página sigue disponible.",
  waiting: "Cuando la temporada esté calculada.",
  cancel: "Parar",
  running: (soil, letter, arm, arms) => `${soil}, ${letter}: cálculo ${arm} de ${arms}`,
  remaining: (seconds) =>
    seconds < 90 ? `quedan unos ${amount(seconds, 1)} s` : `quedan unos ${amount(seconds / 60, 1)} min`,
  starting: "empezando",
  stopped: "Parado. Se muestra lo que terminó.",
  failed: "La comprobación acabó antes de tiempo",
  stale: "De antes de su cambio; compruebe otra vez.",
  took: (seconds, runs) => `${runs} cálculos en ${amount(seconds, 2)} s.`,
  title: (soil, beyond, all) => {
    if (all === 0) return `${soil}: todavía no hay nada que contrastar con la física`;
    if (beyond === 0)
      return `${soil}: la física coincide en lo que hace cada cambio, dentro del margen, en las ${all} cifras`;
    return `${soil}: la física se aparta más que el margen en ${beyond} de ${all} cifras`;
  },
  days: (from, to) => `Del ${from} al ${to}, árbol medio, los dos motores desde el mismo suelo.`,
  noBalance: (letter, when) =>
    `${letter} falló: la ecuación de Richards no encontró equilibrio el ${when}; sus cifras se dejan fuera.`,
  valuesCaption: "Cada programa por el motor rápido y por la física",
  changesCaption: "Lo que hace un cambio de programa",
  measure: "Medida",
  fast: "rápido",
  physics: "física",
  difference: "diferencia",
  change: "Cambio",
  apart: "distancia",
  floor: "margen",
  within: "¿Dentro del margen?",
  yes: "dentro",
  no: "fuera",
  pair: (from, to) => `${from} a ${to}`,
  key: "rombos: física",
  staleKey: "rombos: física, antes de su cambio",
  summary: (low, high) => ` Según la física: de ${amount(low)} a ${depthText(high)}.`,
  hours: (letter) => `${letter}, rápido arriba, física abajo`,
};
