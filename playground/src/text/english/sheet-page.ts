import { amount } from "../number-format.js";

/** Words of the grower's sheet. */
export const sheetPage = {
  heading: "Sheet for the grower",
  print: "Print this half page",
  waiting: "The season is being computed; the sheet follows.",
  title: (soil: string): string => `How to water: ${soil}`,
  sentence: (every: string, pulses: number, minutes: string, gap: string, from: string): string =>
    pulses === 1
      ? `${every}, one run of ${minutes}, from ${from}.`
      : `${every}, ${pulses} pulses of ${minutes}, ${gap}, from ${from}.`,
  perTree: "a tree each day",
  perRun: "open per run",
  starts: "starts",
  latest: (time: string, nextDays: number): string =>
    nextDays > 0 ? `Closed at ${time} the next day at the latest.` : `Closed at ${time} at the latest.`,
  careful: "Careful: with this programme readings beyond the limits below are expected. Change it before you print it.",
  duration: (hours: number, minutes: number): string =>
    hours === 0 ? `${minutes} min` : minutes === 0 ? `${hours} h` : `${hours} h ${minutes} min`,
  perArea: (perHa: string, unit: string): string => `${perHa} m³ per ${unit} and day`,
  readings: "Read before a run, and call if it is otherwise",
  reading: (depthCm: number, fromRowCm: number, low: string, high: string): string =>
    `At ${amount(depthCm)} cm, ${amount(fromRowCm)} cm from the row: ${low} to ${high}.`,
  stops: "Stop and call if",
  stopLines: (air: string, pull: string): readonly string[] => [
    `the shallow instrument stays under ${air} until noon on two days: the roots lack air`,
    `the shallow instrument passes ${pull} before a run: the roots cannot pull`,
    "water stands or runs between the trees while the valve is open",
    "leaves hang although the soil is wet: do not add water, dig",
  ],
  counted: (airless: string, thirsty: string, of: string): string =>
    `Counted for this season: ${airless} of ${of} hours airless, ${thirsty} thirsty. Hours and litres, no promise of yield.`,
  weather: (name: string, from: string, to: string): string => `Weather: ${name}, ${from} to ${to}.`,
  expires: (date: string): string => `Look again by ${date}, or after a storm or a heat wave.`,
  version: (version: string): string => `rootledger ${version}`,
  write: "Notes",
  date: "Date",
  adviser: "Adviser",
};

export type SheetPageWords = typeof sheetPage;
