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
