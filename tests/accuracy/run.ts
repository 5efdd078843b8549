import { bucketDrainChecks, bucketEmitterChecks, bucketRainChecks } from "./bucket-checks.js";
import { columnCases } from "./column-case.js";
import { emitterCases } from "./emitter-case.js";
import { drainChecks, emitterChecks, onFinerLanes, rainChecks, stripChecks } from "./richards-checks.js";
import { runStrip, stripCases } from "./strip-case.js";
import { type Check, checksOf, limitsOf } from "./strip-limits.js";

/** One case of `npm run accuracy`: a name, and the work that gives its checks. */
export interface AccuracyCase {
  readonly name: string;
  /** Part of the quick set that runs with the tests. */
  readonly quick: boolean;
  readonly checks: () => Check[];
}

const quickSame = ["C_loam_f2.0_long_weekly", "C_sandy_loam_f2.0_long_weekly", "C_clay_loam_f4.6_long_weekly"];
const quickDefault = [
  "C_sand_f3.2_daily_1",
  "C_sandy_loam_f3.2_long_weekly",
  "C_loam_f3.2_daily_1",
  "C_clay_loam_f3.2_daily_1",
  "E_sandy_loam_over_clay_f3.2_long_weekly",
];
const quickEmitters = ["D_sandy_loam_q1.2_p1", "D_loam_q2.5_p4", "D_clay_loam_q2.5_p1"];

/** Every accuracy case: Richards and the bucket against the fine-grid reference study. */
export const cases: readonly AccuracyCase[] = [
  ...columnCases.drain.map((c) => ({ name: `richards ${c.id}`, quick: true, checks: () => drainChecks(c) })),
  ...columnCases.rain.map((c) => ({
    name: `richards ${c.id}`,
    quick: c.initialHeadCm === -1000,
    checks: () => rainChecks(c),
  })),
  ...stripCases.map((c) => ({
    name: `richards same-scheme ${c.id}`,
    quick: quickSame.includes(c.id),
    checks: () => stripChecks(c, "same-scheme"),
  })),
  ...stripCases.filter(onFinerLanes).map((c) => ({
    name: `richards default ${c.id}`,
    quick: quickDefault.includes(c.id),
    checks: () => stripChecks(c, "default"),
  })),
  ...emitterCases.map((c) => ({
    name: `richards ${c.id}`,
    quick: quickEmitters.includes(c.id),
    checks: () => emitterChecks(c),
  })),
  ...columnCases.drain.map((c) => ({ name: `bucket ${c.id}`, quick: true, checks: () => bucketDrainChecks(c) })),
  ...columnCases.rain.map((c) => ({ name: `bucket ${c.id}`, quick: true, checks: () => bucketRainChecks(c) })),
  ...emitterCases.map((c) => ({ name: `bucket ${c.id}`, quick: true, checks: () => bucketEmitterChecks(c) })),
  ...stripCases.map((c) => ({
    name: `bucket ${c.id}`,
    quick: true,
    checks: () => {
      const limits = limitsOf(c);
      return limits === null ? [] : checksOf(c, runStrip(c), limits);
    },
  })),
];

/** Runs the quick set or all and returns every check: ours, reference, bound, pass. */
export function accuracyCases(
  choice: { readonly subset: "quick" | "all"; readonly progress?: (name: string) => void } = { subset: "all" },
): Check[] {
  return cases
    .filter((c) => choice.subset === "all" || c.quick)
    .flatMap((c) => {
      choice.progress?.(c.name);
      return c.checks();
    });
}
