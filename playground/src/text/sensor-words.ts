import { byLanguage } from "./by-language.js";
import { amount, listed, whole } from "./number-format.js";

const english = {
  heading: "A file of your sensors",
  drop: "Drop a file of a logger here, or choose one: times with tension or water content at a depth",
  inUse: (name: string, depths: readonly number[], inside: number, all: number): string =>
    `On the lines: ${name}, ${listed(depths.map((cm) => `${amount(cm)} cm`))}; ${whole(inside)} of ${whole(all)} readings fall in this season.`,
  fromContent: "Water contents are turned into tensions by this soil's curve.",
  forget: "Take them off",
  none: "There is no tension and no water content at a known depth in this file.",
  both: "The file has tension and water content; the tensions are taken.",
  use: (count: number, depths: readonly number[]): string =>
    `Draw these ${whole(count)} readings at ${listed(depths.map((cm) => `${amount(cm)} cm`))}`,
  full: "The device has no room to keep this file; the readings stay until the page is closed.",
  miss: (times: string, count: number): string =>
    `The model is off by a factor of ${times} at the middle of ${whole(count)} readings in the days shown.`,
};

const spanish: typeof english = {
  heading: "Un archivo de sus sensores",
  drop: "Suelte aquí el archivo de un registrador, o elija uno: horas con tensión o contenido de agua a una profundidad",
  inUse: (name, depths, inside, all) =>
    `En las líneas: ${name}, ${listed(depths.map((cm) => `${amount(cm)} cm`))}; ${whole(inside)} de ${whole(all)} lecturas caen en esta temporada.`,
  fromContent: "Los contenidos de agua se pasan a tensiones con la curva de este suelo.",
  forget: "Quitarlas",
  none: "En este archivo no hay tensión ni contenido de agua a una profundidad conocida.",
  both: "El archivo trae tensión y contenido de agua; se toman las tensiones.",
  use: (count, depths) => `Dibujar estas ${whole(count)} lecturas a ${listed(depths.map((cm) => `${amount(cm)} cm`))}`,
  full: "El aparato no tiene lugar para guardar este archivo; las lecturas quedan hasta que se cierre la página.",
  miss: (times, count) =>
    `El modelo se aparta en un factor de ${times} en la mitad de ${whole(count)} lecturas de los días mostrados.`,
};

/** Words of sensor files, in the language that holds. */
export const sensorWords = byLanguage(english, spanish);
