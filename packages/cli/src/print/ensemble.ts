import type { EnsembleResult, MeasureBand, PairedDifference } from "rootledger/chance";
import { badgeWords, words } from "../words.js";
import { type MeasureRow, measureRows, printed, title } from "./measure-rows.js";
import { textTable, wrapped } from "./text-table.js";

/** Draws, badges, then for each soil and pair the paired differences with their verdicts; bands for a programme alone. */
export function ensembleText(result: EnsembleResult): string {
  const { draws, members, finished, failed, failures } = result;
  const source = draws.kind === "priors" ? `${words.seed} ${draws.seed}` : words.ownDraws;
  const unknowns = draws.kind === "priors" ? draws.priors.unknowns : [];
  return [
    wrapped(`${result.name}: ${finished} ${words.of} ${members} ${words.drawsFinished}, ${source}.`),
    ...(failed > 0 ? [wrapped(`${failed} ${words.drawsFailed}:`)] : []),
    ...failures.slice(0, 5).map((failure) => wrapped(failureText(failure), "    ", "  ")),
    ...result.badges.map(({ id, holds, heldIn }) =>
      wrapped(
        `${holds ? words.holds : words.doesNotHold}: ${badgeWords[id]} (${words.inDraws} ${heldIn} ${words.of} ${finished})`,
        "    ",
        "  ",
      ),
    ),
    ...(result.differences.length > 0 ? differenceTables(result.differences) : bandTables(result.bands)),
    `\n${words.drawn}\n`,
    ...unknowns.map(({ id, unit, spread, source: from }) =>
      wrapped(`${id}: ${spreadText(spread)} ${unit} (${from})`, "    ", "  "),
    ),
    wrapped(words.verdictRule),
  ].join("");
}

const failureText = ({ member, reason, draw }: EnsembleResult["failures"][number]): string =>
  `${words.draw} ${member}: ${reason} (${Object.entries(draw)
    .map(([id, value]) => `${id} ${numbers(value)}`)
    .join(", ")})`;

function differenceTables(differences: readonly PairedDifference[]): string[] {
  const groups = new Map<string, PairedDifference[]>();
  for (const difference of differences) {
    if (difference.tree !== "mean") continue;
    const name = `${difference.soil}: ${difference.from} -> ${difference.to}`;
    groups.set(name, [...(groups.get(name) ?? []), difference]);
  }
  const head = ["5 %", "median", "95 %", "floor", "more", "less", "verdict"];
  return [...groups].map(([name, list]) => {
    const rows = measureRows.flatMap((row) => {
      const found = list.find(({ measureId }) => measureId === row.id);
      return row.told && found !== undefined ? [[title(row), ...differenceCells(row, found)]] : [];
    });
    return `\n${wrapped(name)}${textTable("", [], [["", ...head], ...rows])}`;
  });
}

const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;

const differenceCells = (row: MeasureRow, d: PairedDifference): string[] => [
  ...[printed(row, d.low), printed(row, d.median), printed(row, d.high), printed(row, d.floor)],
  ...[percent(d.risesShare), percent(d.fallsShare), d.verdict],
];

function bandTables(bands: readonly MeasureBand[]): string[] {
  const arms = [...new Set(bands.map(({ soil, programme }) => `${soil}: ${programme}`))];
  return arms.map((arm) => {
    const rows = measureRows.flatMap((row) => {
      const found = bands.find(
        (band) => band.measureId === row.id && band.tree === "mean" && `${band.soil}: ${band.programme}` === arm,
      );
      return found ? [[title(row), printed(row, found.low), printed(row, found.median), printed(row, found.high)]] : [];
    });
    return `\n${wrapped(arm)}${textTable("", [], [["", "5 %", "median", "95 %"], ...rows])}`;
  });
}

function spreadText(spread: object): string {
  return Object.entries(spread)
    .map(([key, value]) => (key === "kind" ? value : `${key} ${numbers(value)}`))
    .join(" ");
}

const numbers = (value: unknown): string =>
  [value]
    .flat()
    .map((one) => (typeof one === "number" ? String(Number(one.toPrecision(3))) : String(one)))
    .join("/");
