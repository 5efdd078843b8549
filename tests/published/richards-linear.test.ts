import { tabulateSoil } from "rootledger/ground";
import {
  emptyFluxes,
  fillGround,
  type RichardsOptions,
  richardsEngine,
  stateAtHeads,
  stripGrid,
} from "rootledger/water";
import { describe, it } from "vitest";
import richards from "../../data/published/richards.json";
import { expectWithin } from "./near.js";
import { noRoots } from "./richards-column.js";
import { exponentialSoil } from "./richards-soils.js";

// Tracy, F.T. (2006), Water Resour. Res. 42:W08503: a dry box whose top is held at a sine of head, the other faces dry. Series from
// memory, evaluated and confirmed by finite differences. Tolerance as given with those numbers, 0.05 cm.
describe("Tracy (2006), two dimensions", () => {
  const alphaPerCm = 0.01;
  const sideCm = 100;
  const dryHeadCm = -1000;
  const lanes = 40;
  const layers = 100;
  const heights = [25, 50, 75, 90];
  const printed = new Map(
    richards.flatMap(({ topic, inputs, expected }) =>
      topic === "richards-box" && inputs.hours !== undefined && expected.head_cm !== undefined
        ? [[Number(inputs.hours), [expected.head_cm].flat()] as const]
        : [],
    ),
  );

  /** Heads under the middle of the box at the hours asked for. */
  function heads(hours: readonly number[], options: RichardsOptions): number[][] {
    const curve = exponentialSoil({ alphaPerCm, kSatCmPerH: 1, thetaResidual: 0.15, thetaSaturated: 0.45 });
    const grid = stripGrid({
      layerEdgesCm: Array.from({ length: layers + 1 }, (_, i) => (i * sideCm) / layers),
      laneEdgesCm: Array.from({ length: lanes + 1 }, (_, j) => (j * sideCm) / 2 / lanes),
      rowLengthCm: 1,
      sides: 1,
    });
    const ground = fillGround(grid, [tabulateSoil(curve)], new Uint8Array(grid.cells));
    const dry = Math.exp(alphaPerCm * dryHeadCm);
    const engine = richardsEngine({
      ground,
      lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
      roots: { share: new Float64Array(grid.cells), compensationOnset: 1 },
      innerEdge: "mirror",
      stress: noRoots,
      bottom: { kind: "head", headCm: dryHeadCm },
      outer: { kind: "head", headCm: dryHeadCm },
      top: {
        kind: "head",
        headCm: Array.from({ length: lanes }, (_, j) => {
          const fromMiddle = (grid.laneEdgesCm[j] + grid.laneEdgesCm[j + 1]) / 2;
          return Math.log(dry + (1 - dry) * Math.cos((Math.PI * fromMiddle) / sideCm)) / alphaPerCm;
        }),
      },
      options,
    });
    const state = stateAtHeads(ground, new Float64Array(grid.cells).fill(dryHeadCm));
    const fluxes = emptyFluxes(grid);
    const none = new Float64Array(lanes);
    const forcing = { emitterCm3PerH: 0, rainCm3PerH: none, evaporationCm3PerH: none, transpirationCm3PerH: 0 };
    return hours.map((hour) => {
      engine.advance(state, forcing, hour, fluxes);
      const head = state.headCm ?? none;
      return heights.map((height) => {
        // The printed heads stand on a cell edge: the mean of the cells above and below, in e^(alpha h), which is smooth.
        const below = ((sideCm - height) * layers) / sideCm;
        const e = (layer: number): number => Math.exp(alphaPerCm * head[layer * lanes]);
        return Math.log((e(below - 1) + e(below)) / 2) / alphaPerCm;
      });
    });
  }

  it("tends to the steady heads", () => {
    const [ours] = heads([100], { longestStepH: 10, thetaErrorPerStep: 1e-3 });
    heights.forEach((height, k) => {
      expectWithin(ours[k], printed.get(100)?.[k] ?? Number.NaN, 0.05, `steady, ${height} cm high`);
    });
  });

  // Backward Euler errs in proportion to its step; doubling the answer at half the step less the one at the full step
  // cancels that, and the rest is the error in space.
  it("errs in proportion to the time step, and not otherwise, at 2, 5 and 10 h", { timeout: 300_000 }, () => {
    const hours = [2, 5, 10];
    const fixed = (longestStepH: number): number[][] => heads(hours, { longestStepH, thetaErrorPerStep: 1 });
    const full = fixed(0.02);
    const half = fixed(0.01);
    hours.forEach((hour, t) => {
      heights.forEach((height, k) => {
        const exact = printed.get(hour)?.[k] ?? Number.NaN;
        expectWithin(2 * half[t][k] - full[t][k], exact, 0.05, `${hour} h, ${height} cm high`);
        expectWithin(half[t][k], exact, 0.5, `${hour} h, ${height} cm high, steps of 0.01 h`);
      });
    });
  });
});
