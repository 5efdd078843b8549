import { join } from "node:path";
import type { Io } from "../io.js";
import { type InputFault, readText } from "../read-input.js";
import { words } from "../words.js";
import { type CheckResult, judge } from "./judge.js";
import {
  type NotApplicable,
  type PublishedCheck,
  parseChecks,
  parseNotApplicable,
  type Verified,
} from "./published-check.js";

/** Data files of published checks. */
export const publishedFiles = [
  "weather.json",
  "generator.json",
  "crop.json",
  "need.json",
  "surface.json",
  "soil.json",
  "infiltration.json",
  "wetting.json",
  "richards.json",
  "uniformity.json",
  "salinity.json",
  "oxygen.json",
  "solutes.json",
  "roots.json",
] as const;

/** Topics whose checks need more than a function call; the reason is printed beside them. */
const checkedElsewhere: Readonly<Record<string, string>> = {
  "richards-box": "two-dimensional runs of a minute; checked by tests/published/richards-linear.test.ts",
};

/** Published figures that are listed but not checked. */
export const notApplicableFile = "not-applicable.json";

export interface Count {
  readonly passed: number;
  readonly failed: number;
}

/** The whole answer of `truth`. */
export interface Truth {
  readonly checks: readonly CheckResult[];
  /** Checks by how their printed figures came to us. */
  readonly counts: Readonly<Record<Verified | "all", Count>>;
  readonly notApplicable: readonly NotApplicable[];
}

type Read =
  | { readonly ok: true; readonly truth: Truth }
  | { readonly ok: false; readonly faults: readonly InputFault[] };

/** Reads the data files of a folder and runs every check in them. */
export async function readPublished(folder: string, io: Io): Promise<Read> {
  const faults: InputFault[] = [];
  const parsed = async <T>(name: string, of: (text: string) => readonly T[] | undefined): Promise<readonly T[]> => {
    const path = join(folder, name);
    const text = await readText(path, io);
    if (!text.ok) {
      faults.push({ path, received: text.reason, rule: words.notReadable });
      return [];
    }
    const list = of(text.text);
    if (list === undefined) faults.push({ path, received: "something else", rule: words.notChecks });
    return list ?? [];
  };
  const checks: PublishedCheck[] = [];
  for (const name of publishedFiles) checks.push(...(await parsed(name, parseChecks)));
  const notApplicable = await parsed(notApplicableFile, parseNotApplicable);
  if (faults.length > 0) return { ok: false, faults };
  const results = checks.filter(({ topic }) => checkedElsewhere[topic] === undefined).map(judge);
  const elsewhere = checks.flatMap(({ id, topic, source }) => {
    const reason = checkedElsewhere[topic];
    return reason === undefined ? [] : [{ id, topic, source, reason }];
  });
  const count = (of: readonly CheckResult[]): Count => {
    const passed = of.filter(({ pass }) => pass).length;
    return { passed, failed: of.length - passed };
  };
  const by = (verified: Verified): Count => count(results.filter((result) => result.verified === verified));
  const counts = { all: count(results), seen: by("seen"), memory: by("memory"), derived: by("derived") };
  return { ok: true, truth: { checks: results, counts, notApplicable: [...notApplicable, ...elsewhere] } };
}
