import { tabulateSoil, vanGenuchtenCurve } from "rootledger/ground";
import { readilyAvailableWaterMm, stressCoefficient, totalAvailableWaterMm } from "rootledger/tree";
import { emptyFluxes, fillGround, spillEngine, stripGrid } from "rootledger/water";
import type { Evaluators } from "./evaluators.js";

interface Zone {
  readonly fieldCapacity: number;
  readonly wiltingPoint: number;
  readonly depthM: number;
  readonly depletionFraction: number;
  readonly order: "drain-then-uptake" | "uptake-then-drain";
}

interface Day {
  readonly cropEtMm: number;
  readonly percolationMm: number;
  readonly startMm: number;
  readonly endMm: number;
}

/** FAO-56's root zone as one cell of 1 m2 that the spilling engine keeps; 1 mm on it is 1 L. */
function spillingZone(zone: Zone, startMm: number): (cropEtMm: number, waterMm: number) => Day {
  const depthCm = 100 * zone.depthM;
  const grid = stripGrid({ layerEdgesCm: [0, depthCm], laneEdgesCm: [0, 100], rowLengthCm: 100, sides: 1 });
  // The curve only has to span the water contents; the spilling engine does not use its shape.
  const curve = vanGenuchtenCurve(
    "any",
    { thetaResidual: 0.01, thetaSaturated: 0.6, alphaPerCm: 0.02, n: 1.4, kSatCmPerH: 1 },
    "any curve that spans the example",
  );
  const totalMm = totalAvailableWaterMm(zone.fieldCapacity, zone.wiltingPoint, zone.depthM);
  const depletionMm = (theta: number): number => (zone.fieldCapacity - theta) * depthCm * 10;
  const engine = spillEngine({
    ground: fillGround(grid, [tabulateSoil(curve)], new Uint8Array(1)),
    lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
    roots: { share: Float64Array.of(1), compensationOnset: 1 },
    innerEdge: "mirror",
    fieldCapacity: Float64Array.of(zone.fieldCapacity),
    order: zone.order,
    stress: (out, _ground, theta) => {
      const depletion = Math.max(0, depletionMm(theta[0] ?? Number.NaN));
      out.thirst[0] = stressCoefficient(depletion, totalMm, zone.depletionFraction);
      out.air[0] = 1;
      out.state[0] = (out.thirst[0] ?? 1) < 1 ? 1 : 0;
    },
    evaporation: (out) => {
      out.fill(0);
    },
  });
  const state = { timeH: 0, theta: Float64Array.of(zone.fieldCapacity - startMm / (depthCm * 10)) };
  const now = (): number => depletionMm(state.theta[0] ?? Number.NaN);
  return (cropEtMm, waterMm) => {
    const fluxes = emptyFluxes(grid);
    const before = now();
    const forcing = {
      emitterCm3PerH: 0,
      rainCm3PerH: Float64Array.of((waterMm * 1000) / 24),
      evaporationCm3PerH: Float64Array.of(0),
      transpirationCm3PerH: (cropEtMm * 1000) / 24,
    };
    engine.advance(state, forcing, state.timeH + 24, fluxes);
    return {
      cropEtMm: fluxes.transpirationCm3 / 1000,
      percolationMm: fluxes.bottomCm3 / 1000,
      startMm: Math.max(0, before - waterMm),
      endMm: now(),
    };
  };
}

/** FAO-56 chapter 8: the balance of a root zone that spills at once what it cannot hold. */
export const spillingCell: Evaluators = {
  "fao56-ex38-schedule": (given) => {
    const capacity = { fieldCapacity: given.number("theta_fc"), wiltingPoint: given.number("theta_wp") };
    const p = given.number("p");
    const etc = given.numbers("etc_mm_day");
    const deepest = given.number("zr_last_m");
    // Roots that grow add ground at field capacity, so depth changes RAW only.
    const depthM = (day: number): number => {
      const first = given.number("zr_first_m");
      return first + ((deepest - first) * day) / (etc.length - 1);
    };
    const zone = { ...capacity, depthM: deepest, depletionFraction: p, order: "drain-then-uptake" as const };
    const step = spillingZone(zone, given.number("dr0_mm"));
    const water = given.numbers("irrigation_mm").map((mm, i) => mm + (given.numbers("rain_mm")[i] ?? 0));
    const days = etc.map((mm, i) => step(mm, water[i] ?? 0));
    return {
      raw_mm: etc.map((_, i) =>
        readilyAvailableWaterMm(totalAvailableWaterMm(capacity.fieldCapacity, capacity.wiltingPoint, depthM(i)), p),
      ),
      dr_start_mm: days.map(({ startMm }) => startMm),
      dp_mm: days.map(({ percolationMm }) => percolationMm),
      dr_end_mm: days.map(({ endMm }) => endMm),
    };
  },
  "fao56-eq88-literal": (given) => {
    const zone = { fieldCapacity: 0.23, wiltingPoint: 0.1, depthM: 0.35, depletionFraction: 0.6 };
    const step = spillingZone({ ...zone, order: "uptake-then-drain" }, given.number("dr_prev_mm"));
    const day = step(given.number("etc_mm"), given.number("irrigation_mm") + given.number("rain_mm"));
    return { dp_mm: day.percolationMm, dr_end_mm: day.endMm };
  },
  "fao56-ex37-mass-balance": (given) => {
    const step = spillingZone(
      {
        fieldCapacity: given.number("theta_fc"),
        wiltingPoint: given.number("theta_wp"),
        depthM: given.number("zr_m"),
        depletionFraction: given.number("p"),
        order: "drain-then-uptake",
      },
      given.number("dr0_mm"),
    );
    let end = Number.NaN;
    for (let day = 0; day < given.number("days"); day++)
      end = step(given.number("kc") * given.number("eto_mm_day"), 0).endMm;
    return { dr_end_mm: end };
  },
};
