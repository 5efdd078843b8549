import type { Result } from "rootledger";
import { words } from "../words.js";
import { wrapped } from "./text-table.js";
import { wateringText } from "./watering.js";

/** A default or missing-data rule that was used. */
export interface Used {
  readonly path: string;
  readonly value: string;
  readonly source: string;
}

/** What stands below every answer: notes, cautions, defaults with their sources, how well the books close, the version. */
export function assumptions(results: readonly Result[], notes: readonly string[], used: readonly Used[]): string {
  const first = results[0];
  if (first === undefined) return "";
  const worst = Math.max(...results.flatMap((result) => [...result.ledger.residualFraction].map(Math.abs)));
  const solutes = results.some((result) => result.solutes !== undefined);
  const nitrogen = results.some((result) => result.solutes?.nitrogen !== undefined);
  const lines = used.map(({ path, value, source }) => wrapped(`${path} ${value} (${source})`, "    ", "  "));
  return [
    ...words.legend.map((text) => wrapped(text)),
    "\n",
    ...(notes.length > 0 ? [`${words.notes}\n`, ...notes.map((note) => wrapped(note, "    ", "  "))] : []),
    wrapped(`${words.cautionsTitle}: ${words.cautions} ${solutes ? words.cautionsWith : words.cautionsWithout}`),
    ...(nitrogen ? [wrapped(words.chemicals)] : []),
    `${words.defaults}${lines.length === 0 ? `: ${words.noDefaults}` : ""}\n`,
    ...lines,
    wrapped(
      `${words.books} ${worst.toExponential(0)} ${words.ofAllWater}. rootledger ${first.version}, ${first.engine}; ${first.section.geometryReason}; ${first.section.rootsReason}.`,
    ),
  ].join("");
}

/** What a run has to say about itself: how it ended if not at the end, and its notes. */
export function runNotes(result: Result, where: string): string[] {
  const { status } = result;
  const ended =
    status.kind === "failed"
      ? [`failed at hour ${status.hour}: ${status.message}`]
      : status.kind === "stopped"
        ? [`stopped at hour ${status.hour}`]
        : [];
  const watering = result.watering === undefined ? [] : [wateringText(result.watering)];
  return [...ended, ...watering, ...result.notes].map((text) => `${where}: ${text}`);
}
