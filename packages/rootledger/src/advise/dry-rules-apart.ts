import { bisect } from "../numeric/bisect.js";
import { everyPart } from "../scenario/every-part.js";
import { groundOf } from "../scenario/ground-of.js";
import { spellShare } from "../scenario/measures.js";
import { simulate } from "../scenario/run.js";
import type { Scenario } from "../scenario/scenario.js";
import { youngTree } from "../scenario/young-tree.js";
import { depletionFractionFor, stressCoefficient } from "../tree/available-water.js";
import { headFromTension, mmPerCm, tensionFromHead } from "../units.js";
import { thetaAtHead } from "../water/ground.js";
import { column } from "../water/result.js";

/** The two rules for dryness that are held against each other. */
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
  const result = simulate(scenario, everyPart(scenario));
  const water = column(result.hours, "rootZoneWater").values;
  const thirsty = column(result.hours, "thirstyShare").values;
  const wantedL = column(result.days, "wanted").values;
  const counts = { both: 0, onlyDepletion: 0, onlyTension: 0, neither: 0 };
  const endH = result.status.kind === "finished" ? result.hours.rows : result.status.hour;
  for (let hour = 0; hour < endH; hour++) {
    const demandMm = ((wantedL[(hour / 24) | 0] * 1000) / prepared.groundCm2) * mmPerCm;
    const p = depletionFractionFor(depletionFraction, demandMm);
    const byDepletion = stressCoefficient(fullMm - water[hour], totalMm, p) < 1;
    const byTension = thirsty[hour] >= spellShare;
    counts[byDepletion ? (byTension ? "both" : "onlyDepletion") : byTension ? "onlyTension" : "neither"] += 1;
  }
  const wantedMm = fullMm - depletionFraction * totalMm;
  return {
    hours: endH,
    ...counts,
    depletionBeginsKPa: Math.exp(
      bisect((lnKPa) => waterMm(Math.exp(lnKPa)) - wantedMm, Math.log(fieldCapacityKPa), Math.log(wiltingKPa)),
    ),
    pullLimitKPa: tensionFromHead(pullLimitHeadCm),
    pullLimitDepletion: (fullMm - waterMm(tensionFromHead(pullLimitHeadCm))) / totalMm,
  };
}
