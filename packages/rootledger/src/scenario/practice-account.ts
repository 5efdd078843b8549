import type { Practice } from "../tree/practice.js";
import { cm3PerL } from "../units.js";
import type { DefaultUsed, Result } from "../water/result.js";
import { everyPart } from "./every-part.js";
import type { Fault } from "./faults.js";
import { type Files, parseScenario } from "./parse.js";
import { valueAt } from "./parse-issues.js";
import { simulate } from "./run.js";
import type { Scenario } from "./scenario.js";

/** What became of the water of a practice, means over the days of a season, L per tree and day. */
export interface PracticeAccount {
  readonly name: string;
  readonly days: number;
  readonly givenL: number;
  /** Demand of the tree. */
  readonly wantedL: number;
  /** Given over wanted. */
  readonly ratio: number;
  /** What the tree took, and what it would have taken from rain and soil alone. */
  readonly takenL: number;
  readonly takenWithoutL: number;
  /** Where the given water went: each flux less that of the same season without it. They add up to what was given. */
  readonly goes: {
    readonly transpiredL: number;
    readonly evaporatedL: number;
    readonly belowRootsL: number;
    readonly ranOffL: number;
    /** Still within the rooted depth at the end. */
    readonly storedL: number;
  };
}

/** Where given water went, or why it could not be said. */
export type PracticeAccounts =
  | {
      readonly ok: true;
      readonly accounts: readonly PracticeAccount[];
      readonly notes: readonly string[];
      readonly defaultsUsed: readonly DefaultUsed[];
    }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Runs each practice, one run a day at the hour of the scenario's first run, through the season of a scenario file, and the same season
 * without watering; both from the stated tension. A practice's canopy replaces that of the file.
 *
 * @param input the parsed JSON of a scenario file
 * @param files texts of the weather files it names
 * @example practiceAccounts(JSON.parse(text), files, [{ name: "first year", litresPerTreePerDay: 8, canopyDiameterM: 0.8 }]).ok
 */
export function practiceAccounts(input: unknown, files: Files, practices: readonly Practice[]): PracticeAccounts {
  const accounts: PracticeAccount[] = [];
  const notes = new Set<string>();
  const used = new Map<string, DefaultUsed>();
  for (const practice of practices) {
    const parsed = parseScenario(withCanopy(input, practice.canopyDiameterM), files);
    if (!parsed.ok) return parsed;
    const { scenario } = parsed;
    for (const note of parsed.notes) notes.add(note);
    for (const one of parsed.defaultsUsed) used.set(`${one.path} ${one.value}`, one);
    const startH = scenario.programme.runs[0]?.startH ?? 0;
    const amount = { litresPerTree: practice.litresPerTreePerDay };
    const watered = run(scenario, [{ startH, everyDays: 1, firstDay: 0, pulses: 1, gapMinutes: 0, amount }]);
    accounts.push(accountOf(practice.name, watered, run(scenario, [])));
  }
  return { ok: true, accounts, notes: [...notes], defaultsUsed: [...used.values()] };
}

function run(scenario: Scenario, runs: Scenario["programme"]["runs"]): Result {
  const { programme, start } = scenario;
  const asked = { ...scenario, programme: { ...programme, runs }, start: { ...start, kind: "same-state" } } as const;
  return simulate(asked, everyPart(asked));
}

function accountOf(name: string, watered: Result, dry: Result): PracticeAccount {
  const days = watered.days.rows;
  const perDay = (result: Result, column: string): number => {
    const values = result.days.columns.find((one) => one.name === column)?.values ?? new Float64Array();
    return values.reduce((sum, value) => sum + value, 0) / days;
  };
  const more = (column: string): number => perDay(watered, column) - perDay(dry, column);
  const givenL = watered.ledger.emitterCm3[0] / cm3PerL / days;
  const [transpiredL, evaporatedL, belowRootsL] = [more("transpired"), more("evaporated"), more("belowRoots")];
  const ranOffL = more("runoff");
  const wantedL = perDay(watered, "wanted");
  return {
    name,
    days,
    givenL,
    wantedL,
    ratio: givenL / wantedL,
    takenL: perDay(watered, "transpired"),
    takenWithoutL: perDay(dry, "transpired"),
    goes: {
      transpiredL,
      evaporatedL,
      belowRootsL,
      ranOffL,
      storedL: givenL - transpiredL - evaporatedL - belowRootsL - ranOffL,
    },
  };
}

/** The file with another canopy; anything that is not such a file is left for the parser to refuse. */
function withCanopy(input: unknown, canopyDiameterM: number | undefined): unknown {
  const tree = valueAt(input, ["block", "tree"]);
  if (canopyDiameterM === undefined || !isRecord(input) || !isRecord(input.block) || !isRecord(tree)) return input;
  return { ...input, block: { ...input.block, tree: { ...tree, canopyDiameterM } } };
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
