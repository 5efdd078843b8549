import { type Arm, gather, scenarioOf } from "../compare/index.js";
import { everyPart } from "../scenario/every-part.js";
import type { SimulateOptions } from "../scenario/options.js";
import { simulate } from "../scenario/run.js";
import { drawMaker } from "./draw.js";
import { editComparison } from "./edit.js";
import type { EnsemblePlan } from "./ensemble-plan.js";

/** A member's numbers, or a thrown error that says why there are none. */
export type MemberRun = (member: number) => Float64Array;

/**
 * Makes the function that runs one member: its draw, the edit, every programme on every soil with that same draw, and the
 * numbers kept of it in the order of `layoutOf`. Nothing is carried from member to member.
 *
 * @param own an engine of one's own, such as `ownProcesses`; functions do not go to worker threads, so run it by `oneThread`
 * @throws RangeError as `drawMaker`; the returned function, if the member's scenario does not fit together, a run fails on the
 * way or a measure is not a finite number.
 * @example memberRun(plan)(0).length === layoutOf(plan).size
 */
export function memberRun(
  { comparison, trees, draws, weatherYears }: EnsemblePlan,
  own: Pick<SimulateOptions, "engine"> = {},
): MemberRun {
  const drawOf = drawMaker(draws);
  return (member) => {
    const edited = editComparison(comparison, drawOf(member), weatherYears);
    const how = { ...everyPart(edited), ...own, trees };
    const arms = edited.soils.flatMap((soil) =>
      edited.programmes.map((programme): Arm => {
        const result = simulate(scenarioOf(edited, soil, programme), how);
        if (result.status.kind !== "finished")
          throw new RangeError(`${programme.name} on ${soil.name}: ${ending(result)}`);
        return { soil: soil.name, programme: programme.name, result };
      }),
    );
    const numbers: number[] = [];
    for (const { soil, programme, result } of arms) {
      for (const { id, values } of result.measures) {
        for (const value of values) {
          if (!Number.isFinite(value)) throw new RangeError(`${programme} on ${soil}: ${id} is ${value}`);
          numbers.push(value);
        }
      }
    }
    const { differences, badges } = gather(edited, arms, []);
    for (const { difference, floor } of differences) numbers.push(difference, floor);
    for (const { holds } of badges) numbers.push(holds ? 1 : 0);
    return Float64Array.from(numbers);
  };
}

const ending = ({ status }: Arm["result"]): string =>
  status.kind === "failed" ? `failed at hour ${status.hour}: ${status.message}` : "did not reach the end of the season";
