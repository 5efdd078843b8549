import type { Result } from "rootledger";
import { words } from "../words.js";
import { assumptions, runNotes, type Used } from "./assumptions.js";
import { measureTable } from "./measure-table.js";
import { partsText } from "./parts.js";
import { wrapped } from "./text-table.js";
import { valveText } from "./valve.js";

/** The whole answer of `simulate` as text. */
export function resultText(result: Result, place: string, notes: readonly string[], used: readonly Used[]): string {
  return [
    wrapped(result.scenarioName),
    wrapped(`${words.season}: ${result.days.rows} ${words.days} ${result.startDate}, ${place}.`),
    wrapped(`${result.programmeName} ${words.on} ${result.soilName}: ${valveText(result)}.`),
    `\n${measureTable("", [result], [""])}\n`,
    `${partsText(result)}\n`,
    assumptions([result], [...notes, ...runNotes(result, words.notes.toLowerCase())], used),
  ].join("");
}
