import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const data = new URL("../../data/", import.meta.url);

/** Path of a file under data/. */
export const dataPath = (name: string): string => fileURLToPath(new URL(name, data));

export const dataText = (name: string): string => readFileSync(dataPath(name), "utf8");

export const demoFiles = { "weather.csv": dataText("demo/weather.csv") };

export interface Editable {
  // biome-ignore lint/suspicious/noExplicitAny: tests put wrong values into the file on purpose
  [key: string]: any;
}

/** A fresh copy of a demo file's JSON, to be spoiled. */
export const demoJson = (name: "scenario" | "comparison" | "young-trees"): Editable =>
  JSON.parse(dataText(`demo/${name}.json`));

/** Two programmes of the demo on its sand for one day: the least that an ensemble can be asked of. */
export function oneDayComparison(): Editable {
  const demo = demoJson("comparison");
  return {
    ...demo,
    season: { startDate: "2025-12-01", days: 1 },
    soils: demo.soils.slice(1, 2),
    programmes: demo.programmes.slice(1, 3),
    start: { kind: "same-state", tensionKPa: 10 },
  };
}
