import type { CellValues } from "./ground.js";
import { type HeadCurves, logWettest, pieceCount, piecesPerLog, wettestHeadCm } from "./richards-table.js";

/** Values of every cell at one set of heads. Capacity (1/cm) and K slope (1/h) are exact derivatives by head. */
export interface HeadValues extends CellValues {
  readonly theta: Float64Array;
  readonly capacityPerCm: Float64Array;
  readonly conductivityByHeadPerH: Float64Array;
}

/** @example headValues(64).theta.length // 64 */
export function headValues(cells: number): HeadValues {
  return {
    theta: new Float64Array(cells),
    capacityPerCm: new Float64Array(cells),
    conductivityByHeadPerH: new Float64Array(cells),
    conductivityCmPerH: new Float64Array(cells),
    conductivitySlopeCmPerH: new Float64Array(cells),
    headCm: new Float64Array(cells),
    matricFluxCm2PerH: new Float64Array(cells),
  };
}

/** Looks everything up at `values.headCm`. From zero head up the soil is full and the potential grows by kSat x head. */
export function lookUpByHead(values: HeadValues, curves: readonly HeadCurves[], material: Uint8Array): void {
  const { headCm, theta, capacityPerCm, conductivityCmPerH, conductivityByHeadPerH, matricFluxCm2PerH } = values;
  for (let c = 0; c < headCm.length; c++) {
    const soil = curves[material[c]];
    const h = headCm[c];
    if (h >= 0) {
      theta[c] = soil.thetaSaturated;
      capacityPerCm[c] = 0;
      conductivityCmPerH[c] = soil.kSatCmPerH;
      conductivityByHeadPerH[c] = 0;
      matricFluxCm2PerH[c] = soil.potentialSaturatedCm2PerH + soil.kSatCmPerH * h;
      continue;
    }
    if (h > -wettestHeadCm) {
      const part = h / -wettestHeadCm;
      capacityPerCm[c] = (soil.thetaSaturated - soil.wetTheta) / wettestHeadCm;
      conductivityByHeadPerH[c] = (soil.kSatCmPerH - soil.wetConductivityCmPerH) / wettestHeadCm;
      theta[c] = soil.thetaSaturated + h * capacityPerCm[c];
      conductivityCmPerH[c] = soil.kSatCmPerH + h * conductivityByHeadPerH[c];
      matricFluxCm2PerH[c] =
        soil.potentialSaturatedCm2PerH + part * (soil.wetPotentialCm2PerH - soil.potentialSaturatedCm2PerH);
      continue;
    }
    const point = (Math.log(-h) - logWettest) * piecesPerLog;
    const k = point < pieceCount - 1 ? point | 0 : pieceCount - 1;
    const t = point - k < 1 ? point - k : 1;
    const { pieces } = soil;
    const at = k * 12;
    const byHead = piecesPerLog / h;
    theta[c] = pieces[at] + t * (pieces[at + 1] + t * (pieces[at + 2] + t * pieces[at + 3]));
    capacityPerCm[c] = (pieces[at + 1] + t * (2 * pieces[at + 2] + 3 * t * pieces[at + 3])) * byHead;
    conductivityCmPerH[c] = pieces[at + 4] + t * (pieces[at + 5] + t * (pieces[at + 6] + t * pieces[at + 7]));
    conductivityByHeadPerH[c] = (pieces[at + 5] + t * (2 * pieces[at + 6] + 3 * t * pieces[at + 7])) * byHead;
    matricFluxCm2PerH[c] = pieces[at + 8] + t * (pieces[at + 9] + t * (pieces[at + 10] + t * pieces[at + 11]));
  }
}

/** dK/dtheta for processes that ask for it; 0 where theta no longer changes with head. */
export function slopeByTheta(values: HeadValues): void {
  const { conductivitySlopeCmPerH, conductivityByHeadPerH, capacityPerCm } = values;
  for (let c = 0; c < capacityPerCm.length; c++) {
    conductivitySlopeCmPerH[c] = capacityPerCm[c] > 0 ? conductivityByHeadPerH[c] / capacityPerCm[c] : 0;
  }
}
