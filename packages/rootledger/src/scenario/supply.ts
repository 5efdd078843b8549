import type { EmitterSchedule } from "../programme/emitter-schedule.js";
import { cm3PerL } from "../units.js";
import type { TreeName } from "../water/result.js";
import type { Prepared } from "./ground-of.js";
import type { Block, Lines } from "./scenario.js";
import type { Supply } from "./tree-run.js";

/**
 * Water that one tree of the line receives. The mean tree takes its emitters' flow and its share of what drains; the
 * under-fed one stands at the high end, with the flow of the low quarter and nothing drained; the over-fed one, at the low
 * end, takes all that drains from the trees it stands for.
 *
 * @throws RangeError for the over-fed tree of lines that do not drain: it would be the mean tree.
 * @example supplyOf("mean", schedule, prepared, scenario.block.lines).emitterCm3PerH
 */
export function supplyOf(
  name: TreeName,
  { momentsH, flowing, drainingLPerH }: EmitterSchedule,
  { treeFlowLPerH }: Pick<Prepared, "treeFlowLPerH">,
  { lowQuarterUniformityFraction, drainOut }: Lines,
): Supply {
  if (name === "over-fed" && drainOut === undefined) {
    throw new RangeError(
      'simulate requires trees "under-fed" or "mean" where lines stay full: got "over-fed", which needs block.lines.drainOut',
    );
  }
  const flowFactor = name === "under-fed" ? lowQuarterUniformityFraction : 1;
  const drainFactor = name === "mean" ? 1 : name === "over-fed" ? 1 / (drainOut?.lowTreesFraction ?? 1) : 0;
  return {
    momentsH,
    emitterCm3PerH: Float64Array.from(
      flowing,
      (flow, i) => (flow * treeFlowLPerH * flowFactor + drainingLPerH[i] * drainFactor) * cm3PerL,
    ),
  };
}

/** The trees that a block can tell apart: the over-fed one only where lines drain. @example treesOf(scenario.block) // ["mean", "under-fed"] */
export const treesOf = ({ lines }: Pick<Block, "lines">): TreeName[] =>
  lines.drainOut === undefined ? ["mean", "under-fed"] : ["mean", "under-fed", "over-fed"];
