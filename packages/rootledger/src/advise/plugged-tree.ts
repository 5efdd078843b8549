import { lineLayout } from "../lines/layout.js";
import { amountHours } from "../programme/programme.js";
import type { Scenario } from "../scenario/scenario.js";

/**
 * One tree of the block with some more of its emitters plugged: the valve keeps the hours of all the others, so the tree gets less. Its
 * roots are taken where what is left still wets; of a tree that lost an emitter lately some stand in ground that has gone dry.
 * `treesWithPlugged` says how many such trees there are.
 *
 * @throws RangeError if the programme is no calendar, the number is not whole and from 0, or no emitter is left open.
 * @example pluggedTree(scenario, 2).block.lines.pluggedPerTree
 */
export function pluggedTree(scenario: Scenario, morePlugged: number): Scenario {
  const { block, programme } = scenario;
  const lines = { ...block.lines, ...programme.lines };
  if (programme.rule !== undefined) throw new RangeError("pluggedTree requires a calendar of runs: got a rule");
  const { emittersPerTree } = lineLayout(lines.offsetsM, block.treeSpacingM, lines.emitterSpacingM);
  const open = emittersPerTree - lines.pluggedPerTree;
  if (!(Number.isInteger(morePlugged) && morePlugged >= 0 && morePlugged < open)) {
    throw new RangeError(`pluggedTree requires a whole number below the ${open} open emitters: got ${morePlugged}`);
  }
  const flowLPerH = open * (programme.emitterFlowLPerH ?? lines.emitterFlowLPerH);
  const runs = programme.runs.map((run) => ({ ...run, amount: { minutes: amountHours(run.amount, flowLPerH) * 60 } }));
  return {
    ...scenario,
    block: { ...block, lines: { ...block.lines, pluggedPerTree: block.lines.pluggedPerTree + morePlugged } },
    programme: { ...programme, runs },
  };
}
