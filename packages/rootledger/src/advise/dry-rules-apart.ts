import { groundOf } from "../scenario/ground-of.js";
import { simulate } from "../scenario/run.js";
import type { Scenario } from "../scenario/scenario.js";
import { youngTree } from "../scenario/young-tree.js";
import { depletionFractionFor, stressCoefficient } from "../tree/available-water.js";
import { headFromTension, mmPerCm, tensionFromHead } from "../units.js";
import { thetaAtHead } from "../water/ground.js";
import { column } from "../water/result.js";

export interface DryRules {
  /** p of FAO-56 table 22 at 5 mm/d; 0.70 for avocado, 0.50 for citrus. */
  readonly depletionFraction: number;
  /** Tension taken for field capacity, kPa; default 10. */
  readonly fieldCapacityKPa?: number;
}

/** Hours of a run by what two rules for thirst say of its mean tree. */
export interface DryRulesApart {
  readonly hours: number;
  readonly both: number;
  readonly onlyDepletion: number;
  readonly onlyTension: number;
  readonly neither: number;
  /** Root-zone tension, were it even, at which the depletion rule begins on a day of 5 mm, kPa. */
  readonly depletionBeginsKPa: number;
  readonly pullLimitKPa: number;
  /** Depletion at which the tension rule begins, as a fraction of TAW. */
  readonly pullLimitDepletion: number;
}

const wiltingKPa = 1500;
/** Share of the roots that must be thirsty for the tension rule to say so; the longest spells use it too. */
const concernedShare = 0.25;

/**
 * One run under two published rules for thirst: FAO-56's depletion fraction p of the whole root zone, adjusted for the day's demand
 * (Allen et al. 1998, table 22 and eq. 84), beside the pull limit as a tension where the roots are. Where p is taken from one soil to
 * another the same fraction means tensions that differ tenfold.
 *
 * @throws RangeError if p is not in (0, 1) or the scenario does not fit together.
 * @example dryRulesApart(scenario, { depletionFraction: 0.7 }).onlyTension
 */
export function dryRulesApart(
  scenario: Scenario,
  { depletionFraction, fieldCapacityKPa = 10 }: DryRules,
): DryRulesApart {
  if (!(depletionFraction > 0 && depletionFraction < 1)) {
    throw new RangeError(`dryRulesApart requires depletionFraction in (0, 1): got ${depletionFraction}`);
  }
  const prepared = groundOf(scenario, { youngTree });
  const rooted = prepared.rootsByDay.days[prepared.rootsByDay.days.length - 1];
  const waterMm = (tensionKPa: number): number => {
    const theta = thetaAtHead(prepared.ground, headFromTension(tensionKPa));
    return rooted.reduce((sum, share, c) => sum + share * theta[c], 0) * prepared.rootedDepthCm * mmPerCm;
  };
  const fullMm = waterMm(fieldCapacityKPa);
  const totalMm = fullMm - waterMm(wiltingKPa);
  const { pullLimitHeadCm } = prepared.limits;
  const result = simulate(scenario, { youngTree });
  const water = column(result.hours, "rootZoneWater").values;
  const thirsty = column(result.hours, "thirstyShare").values;
  const wantedL = column(result.days, "wanted").values;
  const counts = { both: 0, onlyDepletion: 0, onlyTension: 0, neither: 0 };
  const endH = result.status.kind === "finished" ? result.hours.rows : result.status.hour;
  for (let hour = 0; hour < endH; hour++) {
    const demandMm = ((wantedL[(hour / 24) | 0] * 1000) / prepared.groundCm2) * mmPerCm;
    const p = depletionFractionFor(depletionFraction, demandMm);
    const byDepletion = stressCoefficient(fullMm - water[hour], totalMm, p) < 1;
    const byTension = thirsty[hour] >= concernedShare;
    counts[byDepletion ? (byTension ? "both" : "onlyDepletion") : byTension ? "onlyTension" : "neither"] += 1;
  }
  const wantedMm = fullMm - depletionFraction * totalMm;
  return {
    hours: endH,
    ...counts,
    depletionBeginsKPa: tensionWhere((kPa) => waterMm(kPa) - wantedMm, fieldCapacityKPa),
    pullLimitKPa: tensionFromHead(pullLimitHeadCm),
    pullLimitDepletion: (fullMm - waterMm(tensionFromHead(pullLimitHeadCm))) / totalMm,
  };
}

/** Tension between field capacity and wilting at which a falling difference is 0, on a logarithmic scale, kPa. */
function tensionWhere(difference: (kPa: number) => number, fromKPa: number): number {
  let low = Math.log(fromKPa);
  let high = Math.log(wiltingKPa);
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2;
    if (difference(Math.exp(middle)) > 0) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}
