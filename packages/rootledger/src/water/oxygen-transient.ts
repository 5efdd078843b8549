import { solveBanded } from "../numeric/banded.js";
import { oxygenInAirCm2PerH, oxygenInAirGPerM3, oxygenInWaterCm2PerH, oxygenSolubility } from "./oxygen-air.js";
import { type DiffusivityLaw, gasDiffusivityRatio } from "./oxygen-diffusivity.js";

/** Cells that oxygen moves through, layer by layer; index = layer x lanes + lane. */
export interface OxygenCells {
  readonly layers: number;
  readonly lanes: number;
  readonly thicknessCm: Float64Array;
  readonly laneAreaCm2: Float64Array;
  readonly volumeCm3: Float64Array;
  /** Face between lane and lane + 1 per cm of depth, cm2/cm; 0 where it is a wall. The last one is not used. */
  readonly sideLengthCm: Float64Array;
  readonly laneDistanceCm: Float64Array;
  /** Total porosity by cell. */
  readonly porosity: Float64Array;
}

/** What oxygen in the ground follows from. */
export interface OxygenSetup {
  readonly cells: OxygenCells;
  /** Oxygen that roots and soil would use by cell at full supply, g/h. */
  readonly demandGPerH: Float64Array;
  readonly temperatureC: number;
  readonly law: DiffusivityLaw;
  /** Oxygen in the soil air at which use has fallen to half, g/m3. */
  readonly halfUseGPerM3: number;
}

/** Sums since the start, g. Stored oxygen changes by exactly what came in less what was used. */
export interface OxygenSums {
  /** By diffusion through the surface. */
  diffusedG: number;
  /** With air that the soil drew in as water left it, less what water pushed out. */
  withAirG: number;
  /** Dissolved in the water that came, less in what left, each at the oxygen of its cell. */
  withWaterG: number;
  usedG: number;
}

/** Oxygen of every cell, step by step. */
export interface OxygenModel {
  /** Oxygen in the soil air by cell, g/m3. */
  readonly gPerM3: Float64Array;
  readonly atmosphereGPerM3: number;
  readonly sums: OxygenSums;
  /** Oxygen in all cells, air and water, g. */
  readonly storedG: () => number;
  /** Carries the oxygen over `hours` in which theta goes to a new one. */
  readonly advance: (theta: ArrayLike<number>, hours: number) => void;
}

const cm3PerM3 = 1e6;
const mostRounds = 60;

/**
 * Oxygen in the air of every cell as water comes and goes. Store V (e + H theta) C; diffusion down from the atmosphere and sideways,
 * through air by the given law and through water by Millington & Quirk's in the same form; use by roots and soil, demand x
 * C / (C + half-use). Air moves up and down a lane as water pushes it out or leaves. One implicit step, by Newton until the use
 * settles; the lower end is closed. Oxygen dissolved in water is taken to come and go at its own cell's concentration.
 *
 * @throws RangeError if theta leaves no cell between dry and full, the step is not above 0, or use does not settle in it.
 * @example oxygenModel({ cells, demandGPerH, temperatureC: 20, law: "millington-quirk", halfUseGPerM3: 3 }, theta).advance(theta, 1)
 */
export function oxygenModel(setup: OxygenSetup, theta: ArrayLike<number>): OxygenModel {
  const { cells, demandGPerH, temperatureC, law, halfUseGPerM3 } = setup;
  const { layers, lanes, thicknessCm, laneAreaCm2, volumeCm3, sideLengthCm, laneDistanceCm, porosity } = cells;
  const count = layers * lanes;
  const inAir = oxygenInAirCm2PerH(temperatureC);
  const solubility = oxygenSolubility(temperatureC);
  const atmosphere = oxygenInAirGPerM3(temperatureC);
  const air = Float64Array.from({ length: count }, (_, c) => airOf(porosity[c], theta[c], c));
  const water = Float64Array.from({ length: count }, (_, c) => theta[c]);
  const now = new Float64Array(count).fill(atmosphere);
  const width = 2 * lanes + 1;
  const diffusivity = new Float64Array(count);
  const band = new Float64Array(count * width);
  const right = new Float64Array(count);
  const guess = new Float64Array(count);
  const drawn = new Float64Array(count);
  const useSlope = new Float64Array(count);
  const useAtNone = new Float64Array(count);
  const sums: OxygenSums = { diffusedG: 0, withAirG: 0, withWaterG: 0, usedG: 0 };

  function advance(next: ArrayLike<number>, hours: number): void {
    if (!(hours > 0)) throw new RangeError(`oxygenModel requires steps above 0 h: got ${hours}`);
    const airWas = air.slice();
    for (let c = 0; c < count; c++) {
      air[c] = airOf(porosity[c], next[c], c);
      const f = porosity[c];
      diffusivity[c] =
        inAir * gasDiffusivityRatio(law, air[c], f) +
        oxygenInWaterCm2PerH * solubility * gasDiffusivityRatio("millington-quirk", next[c] < f ? next[c] : f, f);
    }
    airDrawn(airWas, hours);
    // From no oxygen upward: use is concave in the oxygen there is, so every round rises towards the answer and none is below 0.
    guess.fill(0);
    let settled = false;
    for (let round = 0; round < mostRounds && !settled; round++) {
      assemble(airWas, hours);
      solveBanded(band, right, lanes);
      let change = 0;
      for (let c = 0; c < count; c++) {
        const moved = Math.abs(right[c] - guess[c]);
        if (moved > change) change = moved;
        guess[c] = right[c];
      }
      settled = change < 1e-9 * atmosphere;
    }
    if (!settled) throw new RangeError(`oxygenModel requires a step its use settles in: got ${hours} h`);
    book(next, hours);
    now.set(guess);
    for (let c = 0; c < count; c++) water[c] = next[c];
  }

  /** Air that goes down through the upper face of each cell, cm3/h: what it and the cells below it gain. */
  function airDrawn(airWas: Float64Array, hours: number): void {
    for (let j = 0; j < lanes; j++) {
      let gained = 0;
      for (let i = layers - 1; i >= 0; i--) {
        const c = i * lanes + j;
        gained += ((air[c] - airWas[c]) * volumeCm3[c]) / hours;
        drawn[c] = gained;
      }
    }
  }

  function assemble(airWas: Float64Array, hours: number): void {
    band.fill(0);
    for (let c = 0; c < count; c++) {
      const i = (c / lanes) | 0;
      const j = c % lanes;
      const diagonal = c * width + lanes;
      // Water's own oxygen comes and goes at the cell's concentration, so only what stays dissolved counts as store.
      band[diagonal] += (volumeCm3[c] * (air[c] + solubility * water[c])) / hours;
      right[c] = (volumeCm3[c] * (airWas[c] + solubility * water[c]) * now[c]) / hours;
      // Use and its slope at the guess, in cm3/h so that the slope stands beside the flows.
      const most = demandGPerH[c] * cm3PerM3;
      const share = guess[c] + halfUseGPerM3;
      useSlope[c] = (most * halfUseGPerM3) / (share * share);
      useAtNone[c] = (most * guess[c]) / share - useSlope[c] * guess[c];
      band[diagonal] += useSlope[c];
      right[c] -= useAtNone[c];
      if (i === 0) {
        const open = openToAir(c);
        band[diagonal] += open;
        right[c] += open * atmosphere;
        if (drawn[c] > 0) right[c] += drawn[c] * atmosphere;
        else band[diagonal] -= drawn[c];
      } else {
        const above = c - lanes;
        couple(c, above, diffusiveDown(above, c));
        const flow = drawn[c];
        const from = flow > 0 ? above : c;
        band[c * width + lanes + (from - c)] -= flow;
        band[above * width + lanes + (from - above)] += flow;
      }
      if (j + 1 < lanes) couple(c, c + 1, diffusiveSide(c, i, j));
    }
  }

  const openToAir = (c: number): number => (diffusivity[c] * laneAreaCm2[c]) / (thicknessCm[0] / 2);

  function couple(c: number, other: number, flow: number): void {
    band[c * width + lanes] += flow;
    band[other * width + lanes] += flow;
    band[c * width + lanes + (other - c)] -= flow;
    band[other * width + lanes + (c - other)] -= flow;
  }

  function diffusiveDown(above: number, below: number): number {
    const i = (above / lanes) | 0;
    const a = diffusivity[above];
    const b = diffusivity[below];
    const resistance = thicknessCm[i] / 2 / a + thicknessCm[i + 1] / 2 / b;
    return laneAreaCm2[above % lanes] / resistance;
  }

  function diffusiveSide(c: number, i: number, j: number): number {
    const a = diffusivity[c];
    const b = diffusivity[c + 1];
    return (sideLengthCm[j] * thicknessCm[i] * ((2 * a * b) / (a + b))) / laneDistanceCm[j];
  }

  function book(next: ArrayLike<number>, hours: number): void {
    for (let c = 0; c < count; c++) {
      const g = hours / cm3PerM3;
      sums.usedG += (useAtNone[c] + useSlope[c] * guess[c]) * g;
      sums.withWaterG += (volumeCm3[c] * solubility * (next[c] - water[c]) * guess[c]) / cm3PerM3;
      if (c >= lanes) continue;
      sums.diffusedG += openToAir(c) * (atmosphere - guess[c]) * g;
      sums.withAirG += drawn[c] * (drawn[c] > 0 ? atmosphere : guess[c]) * g;
    }
  }

  function storedG(): number {
    let sum = 0;
    for (let c = 0; c < count; c++) sum += volumeCm3[c] * (air[c] + solubility * water[c]) * now[c];
    return sum / cm3PerM3;
  }

  return { gPerM3: now, atmosphereGPerM3: atmosphere, sums, storedG, advance };
}

function airOf(porosity: number, theta: number, cell: number): number {
  const air = porosity - theta;
  // Theta may stand above saturation by rounding alone.
  if (!(air > -1e-9 && theta > 0))
    throw new RangeError(`oxygenModel requires theta from 0 to the porosity ${porosity}: got ${theta} in cell ${cell}`);
  return air > 0 ? air : 0;
}
