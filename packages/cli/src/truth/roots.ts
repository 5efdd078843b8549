import { defaultSoilCurve, tabulateSoil } from "rootledger/ground";
import { pullLimitByDemand, rootDepthShare } from "rootledger/tree";
import { fillGround, type Stress, stripGrid, trapezoid, uptakeInto } from "rootledger/water";
import type { Evaluators } from "./evaluators.js";

/** Deep enough that cutting the profile there changes no printed digit, cm. */
const uncutCm = 1000;

const stressOf = (thirst: readonly number[]): Stress => ({
  thirst: Float64Array.from(thirst),
  air: new Float64Array(thirst.length).fill(1),
  state: new Uint8Array(thirst.length),
});

/** Where roots are, what holds their uptake back, and how they make up for each other. */
export const roots: Evaluators = {
  "feddes-wet-limb": (given) => {
    const [wetZero = Number.NaN, wetFull = Number.NaN, dryFull = Number.NaN, dryZero = Number.NaN] =
      given.numbers("shape_cm");
    const headCm = Float64Array.from(given.numbers("head_cm"));
    const stress = stressOf([...headCm].map(() => 1));
    const layerEdgesCm = Array.from({ length: headCm.length + 1 }, (_, i) => 10 * i);
    const grid = stripGrid({ layerEdgesCm, laneEdgesCm: [0, 10], rowLengthCm: 10, sides: 1 });
    const ground = fillGround(grid, [tabulateSoil(defaultSoilCurve("loam"))], new Uint8Array(grid.cells));
    const shape = { wetZeroHeadCm: wetZero, wetFullHeadCm: wetFull, dryFullHeadCm: dryFull, dryZeroHeadCm: dryZero };
    trapezoid(shape)(stress, ground, ground.thetaSaturated, { headCm });
    return { alpha: stress.thirst.map((factor, c) => factor * (stress.air[c] ?? Number.NaN)) };
  },
  "feddes-demand-limb": (given) => ({
    h3_cm: given.numbers("demand_mm_d").map((mm) =>
      pullLimitByDemand(mm, {
        highDemand: given.number("high_demand_cm"),
        lowDemand: given.number("low_demand_cm"),
      }),
    ),
  }),
  "jarvis-compensation": (given) => {
    const share = Float64Array.from(given.numbers("share"));
    const sink = new Float64Array(share.length);
    const none = new Float64Array(1);
    uptakeInto(sink, { share, compensationOnset: given.number("onset") }, stressOf(given.numbers("alpha")), {
      emitterCm3PerH: 0,
      rainCm3PerH: none,
      evaporationCm3PerH: none,
      transpirationCm3PerH: given.number("demand_mm_d"),
    });
    return { uptake_mm_d: sink, total_mm_d: sink.reduce((sum, mm) => sum + mm, 0) };
  },
  "root-depth": (given) => ({
    share: given.numbers("depth_cm").map((cm) => {
      const topShare = 1 - given.number("beta") ** 20;
      return rootDepthShare([0, cm, uncutCm], uncutCm, topShare)[0];
    }),
  }),
};
