import { amount, whole } from "../number-format.js";

/** Words for files that come in and go out. */
export const dataWords = {
  heading: "Weather of your own",
  now: (name: string): string => `Now: ${name}.`,
  drop: "Drop a weather file here, or choose one",
  chooseFile: "Choose a file",
  stays: "It is read on this device and stays on it.",
  reading: "Reading the file",
  understood: (records: number, first: string, last: string): string =>
    `Understood: ${whole(records)} records, ${first} to ${last}. Look at it before it is used.`,
  form: (layout: string, decimal: string, dates: string): string =>
    `Layout ${layout}; decimals with ${decimal}; dates ${dates}.`,
  columns: ["Column", "Taken for", "Unit", "Values", "Missing"],
  skipped: "left out",
  assumed: "Taken for granted",
  repaired: "Changed on the way in",
  odd: "Odd, left as it is",
  rejected: (count: number): string => `Rows not read: ${whole(count)}`,
  line: (line: number, why: string): string => `Line ${line}: ${why}`,
  lines: (lines: readonly number[]): string => (lines.length === 0 ? "" : ` (lines ${lines.join(", ")})`),
  faults: "This file cannot be used",
  asks: "The file leaves this open:",
  name: "Place",
  demo: "Valle Almagra (invented)",
  noLatitude: "Type the latitude of the place first: the sun and the trees' seasons go by it.",
  latitude: "Latitude, degrees, south negative",
  elevation: "Height above the sea, m",
  use: (days: number, from: string): string => `Use these ${whole(days)} days from ${from}`,
  tooFew: (days: number): string => `Only ${amount(days)} days of weather in it; at least 10 are needed.`,
  gaps: (column: string, count: number): string => `${column}: ${whole(count)} days are missing`,
  noDays: "There is no daily weather in this file.",
  back: "Back to the demo's weather",
  full: "The device has no room to keep this file. Nothing was changed.",
  takeAway: "Take away",
  picture: "section as PNG",
  chart: "water chart as SVG",
  table: "hours as CSV",
  scene: "all as JSON",
};

export type DataWords = typeof dataWords;
