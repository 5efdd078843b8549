import type { RuleName } from "../../state/scene.js";
import type { programmes as english } from "../english/programmes.js";
import { amount } from "../number-format.js";
import { areaWaterText, unitText, waterText } from "../quantity.js";

const counts = ["ninguna", "una", "dos", "tres", "cuatro"];
const rules: Readonly<Record<Exclude<RuleName, "calendar">, string>> = {
  "replace-use": "reponiendo lo usado",
  depletion: "cuando falta mucho",
  tension: "cuando el sensor está seco",
};

const minutesText = (minutes: number): string =>
  minutes === 60 ? "una hora" : minutes % 60 === 0 ? `${minutes / 60} horas` : `${amount(minutes)} min`;

export const programmes: typeof english = {
  heading: "Programas",
  group: (letter) => `Programa ${letter}`,
  show: "Mostrar el programa",
  name: ({ everyDays, pulses, againTime, lines, rule }) =>
    [
      rhythm(everyDays),
      pulses === 1 ? (againTime === "" || rule !== "calendar" ? "un riego" : "dos riegos") : `${pulses} pulsos`,
      ...(rule === "calendar" ? [] : [rules[rule]]),
      ...(lines === 0 ? [] : [`${counts[lines]} ${lines === 1 ? "línea" : "líneas"}`]),
    ].join(", "),
  every: (days) => (days === 1 ? "Cada día" : days === 7 ? "Cada semana" : `Cada ${days} días`),
  everyLabel: "Días de un riego a otro",
  pulses: (count) => (count === 1 ? "un riego de" : `${count} pulsos de`),
  decidedPulses: (count) => (count === 1 ? "en un riego" : `en ${count} pulsos`),
  pulsesLabel: "Pulsos por riego",
  minutes: "min",
  minutesLabel: "Minutos por pulso",
  gap: (minutes) => (minutes === 0 ? "sin pausa" : `con pausa de ${minutesText(minutes)}`),
  gapLabel: "Pausa entre pulsos",
  from: "desde las",
  fromLabel: "Hora de la primera apertura",
  through: "por emisores de",
  flowLabel: "Caudal del emisor",
  flowUnit: (): string => `${unitText("water")}/h`,
  brings: (runLitres, hours, dayLitres) =>
    `${waterText(runLitres)} por árbol en ${durationText(hours)}; ${waterText(dayLitres)} al día`,
  flowing: (emitters, flowLPerH, m3PerHaDay) =>
    `${amount(emitters)} emisores, ${waterText(flowLPerH)}/h entre todos; ${areaWaterText(m3PerHaDay)} al día.`,
  decides: "La regla decide cada día cuánto.",
  more: "Regla, segundo riego, líneas propias",
  duplicate: "Duplicar",
  duplicateLabel: (letter) => `Duplicar el programa ${letter}`,
  remove: "Quitar",
  removeLabel: (letter) => `Quitar el programa ${letter}`,
};

function rhythm(everyDays: number): string {
  if (everyDays === 1) return "diario";
  return everyDays === 7 ? "semanal" : `cada ${everyDays} días`;
}

const durationText = (hours: number): string =>
  hours < 1.5 ? `${amount(hours * 60, 2)} min` : `${amount(hours, 2)} h`;
