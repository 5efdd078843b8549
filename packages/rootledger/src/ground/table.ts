import type { SoilCurve } from "./curve.js";

/**
 * One soil's curves on an even grid of effective saturation Se = (theta - thetaResidual) / (thetaSaturated - thetaResidual).
 * Arrays hold `intervals + 1` values, Se = index / intervals. Conductivity cm/h, head cm (negative),
 * matric flux potential cm2/h: the integral of K over head from minus infinity.
 */
export interface SoilTable {
  readonly curve: SoilCurve;
  readonly intervals: number;
  readonly thetaResidual: number;
  readonly thetaSaturated: number;
  readonly kSatCmPerH: number;
  readonly conductivityCmPerH: Float64Array;
  readonly headCm: Float64Array;
  readonly matricFluxCm2PerH: Float64Array;
}

const driestHeadCm = 2e5;
const wettestHeadCm = 1e-4;
const integrationPoints = 6000;

/**
 * Tabulates a curve once, so that the hot loop only interpolates. The flux potential is the trapezoid rule on points
 * evenly spaced in ln|h|; between |h| = 2e5 cm and minus infinity it is taken as zero.
 *
 * @throws RangeError if the curve falls with rising head or is not finite.
 * @example tabulateSoil(defaultSoilCurve("loam")).intervals // 2048
 */
export function tabulateSoil(curve: SoilCurve, intervals = 2048): SoilTable {
  const heads = new Float64Array(integrationPoints);
  const saturations = new Float64Array(integrationPoints);
  const conductivities = new Float64Array(integrationPoints);
  const potentials = new Float64Array(integrationPoints);
  const porespace = curve.thetaSaturated - curve.thetaResidual;
  const step = Math.log(driestHeadCm / wettestHeadCm) / (integrationPoints - 1);
  for (let i = 0; i < integrationPoints; i++) {
    const headCm = -driestHeadCm * Math.exp(-step * i);
    heads[i] = headCm;
    saturations[i] = (curve.thetaAt(headCm) - curve.thetaResidual) / porespace;
    conductivities[i] = curve.conductivityAt(headCm);
    if (!Number.isFinite(saturations[i]) || !Number.isFinite(conductivities[i])) {
      throw new RangeError(`tabulateSoil requires a finite curve: "${curve.name}" is not finite at head ${headCm} cm`);
    }
    if (i > 0) {
      if (saturations[i] < saturations[i - 1] - 1e-12 || conductivities[i] < conductivities[i - 1] * (1 - 1e-12)) {
        throw new RangeError(`tabulateSoil requires a rising curve: "${curve.name}" falls near head ${headCm} cm`);
      }
      potentials[i] = potentials[i - 1] + 0.5 * (conductivities[i] + conductivities[i - 1]) * (headCm - heads[i - 1]);
    }
  }
  const conductivityCmPerH = new Float64Array(intervals + 1);
  const headCm = new Float64Array(intervals + 1);
  const matricFluxCm2PerH = new Float64Array(intervals + 1);
  let at = 0;
  for (let k = 0; k <= intervals; k++) {
    const saturation = k / intervals;
    while (at < integrationPoints - 2 && saturations[at + 1] < saturation) at++;
    if (saturation <= saturations[0]) {
      headCm[k] = -driestHeadCm;
      continue;
    }
    const span = saturations[at + 1] - saturations[at];
    const part = span > 0 ? Math.min(1, (saturation - saturations[at]) / span) : 1;
    headCm[k] = heads[at] + part * (heads[at + 1] - heads[at]);
    conductivityCmPerH[k] = conductivities[at] + part * (conductivities[at + 1] - conductivities[at]);
    matricFluxCm2PerH[k] = potentials[at] + part * (potentials[at + 1] - potentials[at]);
  }
  const last = integrationPoints - 1;
  headCm[intervals] = 0;
  conductivityCmPerH[intervals] = curve.kSatCmPerH;
  matricFluxCm2PerH[intervals] = potentials[last] + curve.kSatCmPerH * wettestHeadCm;
  return {
    curve,
    intervals,
    thetaResidual: curve.thetaResidual,
    thetaSaturated: curve.thetaSaturated,
    kSatCmPerH: curve.kSatCmPerH,
    conductivityCmPerH,
    headCm,
    matricFluxCm2PerH,
  };
}
