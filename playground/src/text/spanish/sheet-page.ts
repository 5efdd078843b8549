import type { SheetPageWords } from "../english/sheet-page.js";
import { amount } from "../number-format.js";

export const sheetPage: SheetPageWords = {
  heading: "Hoja para el productor",
  print: "Imprimir esta media página",
  waiting: "Se está calculando la temporada; la hoja viene después.",
  title: (soil) => `Cómo regar: ${soil}`,
  sentence: (every, pulses, minutes, gap, from) =>
    pulses === 1
      ? `${every}, un riego de ${minutes}, desde las ${from}.`
      : `${every}, ${pulses} pulsos de ${minutes}, ${gap}, desde las ${from}.`,
  perTree: "por árbol cada día",
  perRun: "abierta por riego",
  starts: "arranques",
  latest: (time, nextDays) =>
    nextDays > 0 ? `Cerrado a más tardar a las ${time} del día siguiente.` : `Cerrado a más tardar a las ${time}.`,
  careful:
    "Cuidado: con este programa se esperan lecturas más allá de los límites de abajo. Cámbielo antes de imprimir.",
  duration: (hours, minutes) =>
    hours === 0 ? `${minutes} min` : minutes === 0 ? `${hours} h` : `${hours} h ${minutes} min`,
  perArea: (perHa, unit) => `${perHa} m³ por ${unit} y día`,
  readings: "Lea antes de un riego, y llame si es otra cosa",
  reading: (depthCm, fromRowCm, low, high) =>
    `A ${amount(depthCm)} cm, a ${amount(fromRowCm)} cm de la hilera: ${low} a ${high}.`,
  stops: "Pare y llame si",
  stopLines: (air, pull) => [
    `el instrumento somero sigue bajo ${air} hasta mediodía dos días: a las raíces les falta aire`,
    `el instrumento somero pasa de ${pull} antes de un riego: las raíces no sacan`,
    "hay agua parada o corriendo entre los árboles con la válvula abierta",
    "cuelgan las hojas aunque el suelo esté mojado: no agregue agua, cave",
  ],
  counted: (airless, thirsty, of) =>
    `Contado para esta temporada: ${airless} de ${of} horas sin aire, ${thirsty} con sed. Horas y litros, ninguna promesa de cosecha.`,
  weather: (name, from, to) => `Clima: ${name}, ${from} a ${to}.`,
  expires: (date) => `Revise antes del ${date}, o tras una tormenta o una ola de calor.`,
  version: (version) => `rootledger ${version}`,
  write: "Notas",
  date: "Fecha",
  adviser: "Asesor",
};
