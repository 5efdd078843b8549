import { requirePositive } from "../numeric/require-positive.js";
import { type SourcePlacement, steadyPointSource, transientPointSource } from "./point-source.js";

/** Soil and flow of a steady point source. */
export interface PointSource {
  readonly placement: SourcePlacement;
  readonly flowCm3PerH: number;
  /** Of K = kSat exp(alpha h). */
  readonly alphaPerCm: number;
}

/** A place beside a source: distance from its vertical, depth below it (negative above a buried one). */
export interface SourcePlace {
  readonly radiusCm: number;
  readonly depthCm: number;
}

/** How long the source has run, in a soil whose conductivity rises in a straight line with its water content. */
export interface SourceTime {
  readonly hours: number;
  /** dK/dtheta, cm/h; usually kSat over the rise from the start to saturation. */
  readonly conductivityPerThetaCmPerH: number;
}

/**
 * Matric flux potential phi = int K dh = K/alpha round a point source, cm2/h, once flow is steady: phi = alpha q Phi/(8 pi),
 * Phi by `steadyPointSource`. @throws RangeError as that function, or when flow or alpha is not above 0.
 * @example steadyMatricFluxCm2PerH({ placement: "surface", flowCm3PerH: 4000, alphaPerCm: 0.05 }, { radiusCm: 40, depthCm: 0 }) // 2.363
 */
export function steadyMatricFluxCm2PerH(source: PointSource, place: SourcePlace): number {
  const { placement, flowCm3PerH, alphaPerCm } = source;
  requirePositive("steadyMatricFluxCm2PerH", { flowCm3PerH, alphaPerCm });
  const half = alphaPerCm / 2;
  const scaled = steadyPointSource(placement, half * place.radiusCm, half * place.depthCm);
  return (alphaPerCm * flowCm3PerH * scaled) / (8 * Math.PI);
}

/**
 * The same some hours after the source was opened, as the rise over a uniform start; the water content has then risen by
 * alpha phi / (dK/dtheta). @throws RangeError as `transientPointSource`, or when an argument is not above 0.
 * @example transientMatricFluxCm2PerH(source, { radiusCm: 20, depthCm: 0 }, { hours: 2, conductivityPerThetaCmPerH: 10 })
 */
export function transientMatricFluxCm2PerH(source: PointSource, place: SourcePlace, time: SourceTime): number {
  const { placement, flowCm3PerH, alphaPerCm } = source;
  const { hours, conductivityPerThetaCmPerH } = time;
  requirePositive("transientMatricFluxCm2PerH", { flowCm3PerH, alphaPerCm, hours, conductivityPerThetaCmPerH });
  const half = alphaPerCm / 2;
  const scaledTime = (alphaPerCm * conductivityPerThetaCmPerH * hours) / 4;
  const scaled = transientPointSource(placement, half * place.radiusCm, half * place.depthCm, scaledTime);
  return (alphaPerCm * flowCm3PerH * scaled) / (8 * Math.PI);
}
