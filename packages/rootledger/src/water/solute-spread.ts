import type { SoluteFlows } from "./solute-flows.js";
import type { SoluteGrid } from "./solute-grid.js";

/** How a solute spreads in the water that carries it. */
export interface Spreading {
  /**
   * Dispersivity along the flow, cm. Default 2: our choice within the 1-10 cm that leaching studies of 0-100 cm report
   * (Vanderborght & Vereecken 2007, Vadose Zone J. 6:29-52, from memory).
   */
  readonly alongCm: number;
  /** Dispersivity across the flow, cm. Default a tenth of that along it, the usual rule. */
  readonly acrossCm: number;
  /** Diffusivity in free water, cm2/h. Default 0.054 (1.5e-5 cm2/s; nitrate 1.9e-5, chloride 2.0e-5, from memory). */
  readonly inWaterCm2PerH: number;
}

/** Dispersivity and diffusion where nothing is said. */
export const usualSpreading: Spreading = { alongCm: 2, acrossCm: 0.2, inWaterCm2PerH: 0.054 };

/** Exchange of water through each lower and outer face that spreads as dispersion and diffusion do, cm3/h. */
export interface Exchange {
  readonly down: Float64Array;
  readonly side: Float64Array;
}

/**
 * D A / d with theta D = along |q| + across |q crossing| + theta Dw tau; tau = theta^(7/3) / f^2 (Millington & Quirk 1961). No
 * exchange through the surface or the bottom.
 *
 * @example exchangeInto(exchange, grid, flows, usualSpreading, ground.thetaSaturated)
 */
export function exchangeInto(
  out: Exchange,
  grid: SoluteGrid,
  flows: SoluteFlows,
  spreading: Spreading,
  thetaSaturated: Float64Array,
): void {
  const { slices, lanes, coarse, thicknessCm, layerOf, volumeCm3 } = grid;
  const { laneAreaCm2, sideLengthCm, laneDistanceCm } = coarse;
  const { down, side, waterCm3 } = flows;
  const { alongCm, acrossCm, inWaterCm2PerH } = spreading;
  for (let s = 0; s < slices; s++) {
    const layer = layerOf[s] * lanes;
    for (let j = 0; j < lanes; j++) {
      const f = s * lanes + j;
      const here = diffusing(waterCm3[f] / volumeCm3[f], thetaSaturated[layer + j]) * inWaterCm2PerH;
      const sideArea = sideLengthCm[j] * thicknessCm[s];
      const outward = side[f] < 0 ? -side[f] : side[f];
      if (s + 1 < slices) {
        const b = f + lanes;
        const there =
          diffusing(waterCm3[b] / volumeCm3[b], thetaSaturated[layerOf[s + 1] * lanes + j]) * inWaterCm2PerH;
        const flow = down[f] < 0 ? -down[f] : down[f];
        const crossing = sideArea > 0 ? (outward / sideArea) * laneAreaCm2[j] : 0;
        const d = 0.5 * (thicknessCm[s] + thicknessCm[s + 1]);
        out.down[f] = (alongCm * flow + acrossCm * crossing + meanOf(here, there) * laneAreaCm2[j]) / d;
      } else out.down[f] = 0;
      if (j + 1 < lanes && sideArea > 0) {
        const n = f + 1;
        const there = diffusing(waterCm3[n] / volumeCm3[n], thetaSaturated[layer + j + 1]) * inWaterCm2PerH;
        const flow = down[f] < 0 ? -down[f] : down[f];
        const next = down[n] < 0 ? -down[n] : down[n];
        const crossing = 0.5 * sideArea * (flow / laneAreaCm2[j] + next / laneAreaCm2[j + 1]);
        out.side[f] = (alongCm * outward + acrossCm * crossing + meanOf(here, there) * sideArea) / laneDistanceCm[j];
      } else out.side[f] = 0;
    }
  }
}

/** theta tau, m3/m3. */
const diffusing = (theta: number, saturated: number): number =>
  (theta * theta * theta * Math.cbrt(theta)) / (saturated * saturated);

/** Harmonic mean: the drier side decides. */
const meanOf = (a: number, b: number): number => (a + b > 0 ? (2 * a * b) / (a + b) : 0);
