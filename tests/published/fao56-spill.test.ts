import { tabulateSoil, vanGenuchtenCurve } from "rootledger/ground";
import { depletionFractionFor, stressCoefficient } from "rootledger/tree";
import { emptyFluxes, fillGround, spillEngine, stripGrid } from "rootledger/water";
import { describe, it } from "vitest";
import { expectWithin } from "./near.js";

// Allen, R.G., Pereira, L.S., Raes, D., Smith, M. (1998). Crop evapotranspiration. FAO Irrigation and Drainage Paper 56.

/** One cell of 1 m2 and the root depth, kept by the spill engine; Ks by eq. 84 from the cell's own depletion. */
function oneCell(
  fieldCapacity: number,
  wiltingPoint: number,
  rootDepthM: number,
  p: number | ((etcMm: number) => number),
  order: "drain-then-uptake" | "uptake-then-drain",
) {
  const depthCm = rootDepthM * 100;
  const grid = stripGrid({ layerEdgesCm: [0, depthCm], laneEdgesCm: [0, 100], rowLengthCm: 100, sides: 1 });
  // The curve only has to span the water contents of the example; the spill engine does not use its shape.
  const curve = vanGenuchtenCurve(
    "example",
    { thetaResidual: 0.01, thetaSaturated: 0.6, alphaPerCm: 0.02, n: 1.4, kSatCmPerH: 1 },
    "any curve that spans the example",
  );
  const ground = fillGround(grid, [tabulateSoil(curve)], new Uint8Array(1));
  const totalMm = 1000 * (fieldCapacity - wiltingPoint) * rootDepthM;
  const depletionMm = (theta: number): number => (fieldCapacity - theta) * depthCm * 10;
  let share = typeof p === "number" ? p : 0;
  const engine = spillEngine({
    ground,
    lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
    roots: { share: Float64Array.of(1), compensationOnset: 1 },
    innerEdge: "mirror",
    fieldCapacity: Float64Array.of(fieldCapacity),
    order,
    stress: (out, _ground, theta) => {
      out.thirst[0] = stressCoefficient(Math.max(0, depletionMm(theta[0])), totalMm, share);
      out.air[0] = 1;
      out.state[0] = out.thirst[0] < 1 ? 1 : 0;
    },
    evaporation: (out) => {
      out.fill(0);
    },
  });
  const state = { timeH: 0, theta: Float64Array.of(fieldCapacity) };
  /** One day; 1 mm on 1 m2 is 1000 cm3. */
  const day = (etcMm: number, waterMm: number) => {
    const fluxes = emptyFluxes(grid);
    if (typeof p !== "number") share = p(etcMm);
    engine.advance(
      state,
      {
        emitterCm3PerH: 0,
        rainCm3PerH: Float64Array.of((waterMm * 1000) / 24),
        evaporationCm3PerH: Float64Array.of(0),
        transpirationCm3PerH: (etcMm * 1000) / 24,
      },
      state.timeH + 24,
      fluxes,
    );
    return {
      etcMm: fluxes.transpirationCm3 / 1000,
      percolationMm: fluxes.bottomCm3 / 1000,
      depletionMm: depletionMm(state.theta[0]),
    };
  };
  const startAt = (mm: number): void => {
    state.theta[0] = fieldCapacity - mm / (depthCm * 10);
  };
  return { day, startAt };
}

describe("FAO-56 root-zone balance in one spilling cell", () => {
  // Example 37: tomato on silt, ETo 5, Kc 1.2, Dr 55 mm at the start; printed to 0.1 mm, tolerance half of that; seen.
  it("Example 37: ten days of drying", () => {
    const { day, startAt } = oneCell(0.32, 0.12, 0.8, 0.4, "drain-then-uptake");
    startAt(55);
    const etc = [6, 6, 5.8, 5.4, 5.1, 4.8, 4.5, 4.2, 3.9, 3.7];
    const end = [61, 67, 72.8, 78.3, 83.4, 88.2, 92.6, 96.9, 100.8, 104.5];
    etc.forEach((expected, d) => {
      const ours = day(6, 0);
      expectWithin(ours.etcMm, expected, 0.05, `ETc of day ${d + 1}`);
      expectWithin(ours.depletionMm, end[d], 0.05, `Dr after day ${d + 1}`);
    });
  });

  // Table 22's p moved each day by what the crop wants, p + 0.04 (5 - ETc), within 0.1 to 0.8 (footnote of the table; seen). On days
  // of 3 and 8 mm p 0.5 becomes 0.58 and 0.38: of 100 mm TAW the first 58 and 38 mm are drawn freely. Worked by hand from eq. 84.
  it("p moved by the day's ETc: free to 58 mm on days of 3 mm, to 38 mm on days of 8 mm, Ks by eq. 84 beyond", () => {
    const moved = (etcMm: number): number => depletionFractionFor(0.5, etcMm);
    const { day, startAt } = oneCell(0.25, 0.15, 1, moved, "drain-then-uptake");
    startAt(40);
    expectWithin(day(3, 0).etcMm, 3, 1e-9, "3 mm at 40 mm depletion");
    startAt(40);
    expectWithin(day(8, 0).etcMm, (8 * (100 - 40)) / (100 - 38), 1e-9, "8 mm at 40 mm depletion");
    startAt(60);
    expectWithin(day(3, 0).etcMm, (3 * 40) / 42, 1e-9, "3 mm at 60 mm depletion");
    startAt(30);
    let got = 0;
    for (let d = 0; d < 3; d++) got += day(8, 0).etcMm;
    expectWithin(got, 16 + (8 * (100 - 46)) / 62, 1e-9, "three days of 8 mm from 30 mm");
  });

  // Example 38: ten days with irrigation at RAW; printed to 1 mm. DP tolerance half of that, Dr 1 mm because the example
  // carries rounded values from day to day (fitted); seen, in a printing before the errata of 2006. Root growth from 0.30
  // to 0.35 m changes RAW only: the ground it adds is at field capacity.
  it("Example 38: water early in the day, drainage before ET", () => {
    const { day, startAt } = oneCell(0.23, 0.1, 0.35, 0.6, "drain-then-uptake");
    startAt(23.4);
    const etc = [5.5, 6.1, 4.0, 2.9, 2.5, 2.7, 4.7, 2.8, 2.2, 6.3];
    const water = [40, 0, 0, 0, 0, 6, 0, 0, 0, 27];
    const percolation = [17, 0, 0, 0, 0, 0, 0, 0, 0, 0];
    const end = [5, 12, 16, 18, 21, 18, 22, 25, 27, 6];
    etc.forEach((mm, d) => {
      const ours = day(mm, water[d]);
      expectWithin(ours.percolationMm, percolation[d], 0.5, `DP of day ${d + 1}`);
      expectWithin(ours.depletionMm, end[d], 1, `Dr after day ${d + 1}`);
    });
  });

  // Equation 88 taken literally subtracts the day's ET before drainage: 11.1 mm and 0, against the 17 and 5 of the
  // printed table. Both orders are offered; formula seen, inputs of Example 38.
  it("eq. 88 as printed: ET before drainage", () => {
    const { day, startAt } = oneCell(0.23, 0.1, 0.35, 0.6, "uptake-then-drain");
    startAt(23.4);
    const ours = day(5.5, 40);
    expectWithin(ours.percolationMm, 11.1, 0.05, "DP");
    expectWithin(ours.depletionMm, 0, 0.05, "Dr");
  });
});
