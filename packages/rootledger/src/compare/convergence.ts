import { everyPart } from "../scenario/every-part.js";
import type { SimulateOptions } from "../scenario/options.js";
import { simulate } from "../scenario/run.js";
import { measure } from "../water/result.js";
import { gather, scenarioOf } from "./compare.js";
import type { Arm, Comparison, Difference } from "./comparison.js";
import { floorOf } from "./floors.js";

/** How fine a run is: how much change of theta may be in doubt in a sub-step, and into how many each layer is cut. */
export interface Fineness {
  readonly thetaDoubtPerStep: number;
  readonly layerParts: number;
}

/** The usual step and layers, then half the step, a quarter of it, layers of half the height, and half of both. */
const usualStep = 0.005;
const finenesses: readonly Fineness[] = [
  { thetaDoubtPerStep: usualStep, layerParts: 1 },
  { thetaDoubtPerStep: usualStep / 2, layerParts: 1 },
  { thetaDoubtPerStep: usualStep / 4, layerParts: 1 },
  { thetaDoubtPerStep: usualStep, layerParts: 2 },
  { thetaDoubtPerStep: usualStep / 2, layerParts: 2 },
];

const told = ["airless", "thirsty", "below-roots", "transpiration"] as const;

/** One measure of one programme on one soil, mean tree, as it changes with fineness. */
export interface ConvergenceRow {
  readonly soil: string;
  readonly programme: string;
  readonly measureId: (typeof told)[number];
  readonly unit: string;
  /** At the usual step and layers. */
  readonly usual: number;
  /** Value less the usual one, in the order of `finenesses`; the first is 0. */
  readonly changes: readonly number[];
  /** What a comparison takes for nothing on this measure. */
  readonly floor: number;
}

/** What finer steps and layers change. */
export interface Convergence {
  readonly finenesses: readonly Fineness[];
  readonly rows: readonly ConvergenceRow[];
  /** Differences between programmes whose verdict is another one at some fineness than at the usual. */
  readonly flips: readonly (Pick<Difference, "soil" | "from" | "to" | "measureId"> & {
    readonly fineness: Fineness;
    readonly usual: Difference["verdict"];
    readonly finer: Difference["verdict"];
  })[];
  /** The largest step at which no measure is farther than its floor from that at a quarter of the usual; left out if half is not either. */
  readonly safeThetaChangePerStep?: number;
  /** Whether cutting each layer in two moves no measure beyond its floor. */
  readonly layersFine: boolean;
}

/**
 * What halving the step and the layers changes in airless and thirsty root-hours, drainage and uptake, and whether a verdict between
 * programmes flips. The bucket engine chooses its own steps: they end where more than `thetaDoubtPerStep` of the change of
 * some cell would be in doubt, so this is the dt to halve. Five runs of each programme on each soil, mean tree.
 *
 * @throws RangeError as `simulate`, for Richards' equation, or if a run fails on the way.
 * @example convergence(comparison).safeThetaChangePerStep
 */
export function convergence(
  comparison: Comparison,
  options: Pick<SimulateOptions, "lanes" | "geometry"> & {
    readonly onRun?: (done: number, all: number) => void;
  } = {},
): Convergence {
  if (comparison.engine === "richards") throw new RangeError("convergence requires the bucket engine: got richards");
  const { soils, programmes } = comparison;
  const { onRun, ...choice } = options;
  const all = finenesses.length * soils.length * programmes.length;
  let done = 0;
  const armsAt = ({ thetaDoubtPerStep, layerParts }: Fineness): Arm[] =>
    soils.flatMap((soil) =>
      programmes.map((programme) => {
        const result = simulate(scenarioOf(comparison, soil, programme), {
          ...everyPart(comparison),
          ...choice,
          thetaDoubtPerStep,
          cutLayers: (edges) => cutInto(edges, layerParts),
        });
        if (result.status.kind !== "finished") {
          throw new RangeError(`convergence requires runs that finish: ${programme.name} on ${soil.name} did not`);
        }
        onRun?.(++done, all);
        return { soil: soil.name, programme: programme.name, result };
      }),
    );
  const runs = finenesses.map(armsAt);
  const rows = runs[0].flatMap((arm, a) =>
    told.map((measureId): ConvergenceRow => {
      const values = runs.map((arms) => measure(arms[a].result, measureId).values[0]);
      const soil = soils[Math.floor(a / programmes.length)];
      return {
        ...{ soil: arm.soil, programme: arm.programme, measureId },
        unit: measure(arm.result, measureId).unit,
        usual: values[0],
        changes: values.map((value) => value - values[0]),
        floor: floorOf(measureId, arm.result, soil, [], 0).size,
      };
    }),
  );
  const within = (a: number, b: number): boolean =>
    rows.every(({ changes, floor }) => Math.abs(changes[a] - changes[b]) <= floor);
  const safe = within(0, 2) ? usualStep : within(1, 2) ? usualStep / 2 : undefined;
  return {
    finenesses,
    rows,
    flips: flipsOf(comparison, runs),
    ...(safe !== undefined && { safeThetaChangePerStep: safe }),
    layersFine: within(3, 0) && within(4, 1),
  };
}

/** Each layer cut into equal parts. @example cutInto([0, 10, 30], 2) // [0, 5, 10, 20, 30] */
export const cutInto = (edgesCm: readonly number[], parts: number): number[] =>
  edgesCm.flatMap((edge, i) =>
    i === 0
      ? [edge]
      : Array.from({ length: parts }, (_, k) =>
          k === parts - 1 ? edge : edgesCm[i - 1] + ((edge - edgesCm[i - 1]) * (k + 1)) / parts,
        ),
  );

function flipsOf(comparison: Comparison, runs: readonly (readonly Arm[])[]): Convergence["flips"] {
  const [usual, ...finer] = runs.map((arms) => gather(comparison, arms, []).differences);
  return finer.flatMap((differences, f) =>
    differences.flatMap(({ soil, from, to, measureId, verdict }, i) =>
      verdict === usual[i].verdict || !told.some((id) => id === measureId)
        ? []
        : [{ soil, from, to, measureId, fineness: finenesses[f + 1], usual: usual[i].verdict, finer: verdict }],
    ),
  );
}
