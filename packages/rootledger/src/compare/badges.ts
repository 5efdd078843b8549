import { column, measure } from "../water/result.js";
import type { Arm, Badge, Comparison, Question } from "./comparison.js";

const sameWaterFraction = 0.01;
const settledFraction = 0.01;

/**
 * What may truthfully be said beside the comparison. Each badge is worked out from the results, not from the request.
 *
 * @example badgesOf(comparison, arms, changes).find((b) => b.id === "same-water")?.holds
 */
export function badgesOf(
  comparison: Comparison,
  arms: readonly Arm[],
  changes: readonly { readonly from: string; readonly to: string; readonly questions: readonly Question[] }[],
): Badge[] {
  return [
    sameWater(arms),
    sameWeather(arms),
    comparison.start.kind === "settled" ? settled(arms) : sameStart(arms),
    oneQuestion(changes),
  ];
}

/** Whether the mean tree's water of the season is the same under all of them. @example waterOf(arms).same */
export function waterOf(arms: readonly Arm[]): { least: number; most: number; apart: number; same: boolean } {
  const litres = arms.map((arm) => measure(arm.result, "applied").values[meanTree(arm)]);
  const most = Math.max(...litres);
  const least = Math.min(...litres);
  const apart = most > 0 ? (most - least) / most : 0;
  return { least, most, apart, same: apart <= sameWaterFraction };
}

function sameWater(arms: readonly Arm[]): Badge {
  const { least, most, apart, same } = waterOf(arms);
  return {
    id: "same-water",
    holds: same,
    detail: `${least.toFixed(0)} to ${most.toFixed(0)} L per tree, ${(apart * 100).toFixed(1)} % apart`,
    figures: { leastL: least, mostL: most, apartFraction: apart },
  };
}

function sameWeather(arms: readonly Arm[]): Badge {
  const differs = (name: string): boolean => {
    const first = column(arms[0].result.days, name).values;
    const trees = arms[0].result.trees.length;
    return arms.some((arm) => {
      const other = column(arm.result.days, name).values;
      for (let row = 0; row < arm.result.days.rows; row++) if (other[row * trees] !== first[row * trees]) return true;
      return false;
    });
  };
  const holds = !differs("et0") && !differs("rain");
  return {
    id: "same-weather",
    holds,
    detail: holds ? "ET0 and rain of every day are equal" : "ET0 or rain differ on some day",
  };
}

function sameStart(arms: readonly Arm[]): Badge {
  const bySoil = new Map<string, number>();
  let holds = true;
  for (const arm of arms) {
    const start = arm.result.ledger.startCm3[meanTree(arm)];
    const first = bySoil.get(arm.soil);
    if (first === undefined) bySoil.set(arm.soil, start);
    else if (first !== start) holds = false;
  }
  return {
    id: "same-start",
    holds,
    detail: holds ? "all programmes start from one state of the soil" : "start storage differs between programmes",
  };
}

function settled(arms: readonly Arm[]): Badge {
  const worst = Math.max(...arms.map((arm) => arm.result.settling.changeFraction));
  const cycled = arms.every((arm) => arm.result.settling.kind === "settled");
  return {
    id: "settled",
    holds: cycled && worst < settledFraction,
    detail: cycled
      ? `each cycled under its own programme; last change ${(worst * 100).toPrecision(2)} % of the water applied per cycle`
      : "some programme started from a given state",
    figures: { changeFraction: worst },
  };
}

function oneQuestion(
  changes: readonly { readonly from: string; readonly to: string; readonly questions: readonly Question[] }[],
): Badge {
  const mixed = changes.filter((change) => change.questions.length > 1);
  return {
    id: "one-question",
    holds: mixed.length === 0,
    detail:
      mixed.length === 0
        ? "each programme changes one thing against the one before"
        : mixed.map((m) => `${m.from} to ${m.to} changes ${m.questions.join(" and ")}`).join("; "),
  };
}

const meanTree = (arm: Arm): number => Math.max(0, arm.result.trees.indexOf("mean"));
