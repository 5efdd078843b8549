import { requirePositive } from "../numeric/require-positive.js";
import type { ExponentialSoil } from "./exponential-soil.js";
import type { EmitterRun } from "./schwartzman-zur.js";
import { woodingPondRadiusCm } from "./wooding-pond.js";

/**
 * What more emitter flow does to the width at the end of the run, at equal volume: `longer-run-wider`, the slower emitter
 * wets a little wider because it ran longer; `about-even`; `pond-wider`, the faster one wets wider because its pond is.
 */
export type FlowEffect = "longer-run-wider" | "about-even" | "pond-wider";

/** The pond beside the body that the run wets. */
export interface PondShare {
  /** Wooding's (1968) steady pond, cm. */
  readonly pondRadiusCm: number;
  /** Half a ball that the volume would just fill to saturation: a wetted radius in which flow and texture have no part, cm. */
  readonly hemisphereRadiusCm: number;
  readonly pondShare: number;
  readonly effect: FlowEffect;
}

/**
 * Shares of the half ball's radius below which the slower emitter wets wider and above which the pond does. Ours, not
 * published: read from 105 axisymmetric Richards runs of this library (seven Carsel & Parrish classes from sand to clay loam,
 * 3 to 8 L at 0.5 to 8 L/h, started at -500 and -100 cm). Doubling the flow changed the width at the end of the run by -4 to
 * -9 % where the share, mean of both flows, was under 0.2, by -7 to +8 % between, and by +2 to +27 % above 0.5. Twelve hours
 * later the slower emitter's gain was gone (2 % at most); the pond's was mostly still there.
 */
export const pondShareLimits = { longerRunBelow: 0.2, pondAbove: 0.5 } as const;

/**
 * Radius of the half ball that holds a volume at a mean rise of the water content: (3V / (2 pi rise))^(1/3), cm. Geometry.
 * @throws RangeError when an argument is not above 0. @example hemisphereRadiusCm(12000, 0.2) // 30.6
 */
export function hemisphereRadiusCm(volumeCm3: number, thetaRise: number): number {
  requirePositive("hemisphereRadiusCm", { volumeCm3, thetaRise });
  return Math.cbrt((3 * volumeCm3) / (2 * Math.PI * thetaRise));
}

/**
 * Whether the pond decides the sign of the effect of emitter flow on the wetted width, by the pond's share of the half ball.
 * @param freePores saturated less initial water content, m3/m3
 * @throws RangeError when an argument is not above 0.
 * @example flowEffect({ emitterFlowCm3PerH: 4000, volumeCm3: 8000, kSatCmPerH: 1.04, alphaPerCm: 0.145 }, 0.28).effect // "pond-wider"
 */
export function flowEffect(run: EmitterRun & ExponentialSoil, freePores: number): PondShare {
  const pondRadiusCm = woodingPondRadiusCm(run.emitterFlowCm3PerH, run);
  const halfBallCm = hemisphereRadiusCm(run.volumeCm3, freePores);
  const pondShare = pondRadiusCm / halfBallCm;
  const { longerRunBelow, pondAbove } = pondShareLimits;
  const effect = pondShare < longerRunBelow ? "longer-run-wider" : pondShare > pondAbove ? "pond-wider" : "about-even";
  return { pondRadiusCm, hemisphereRadiusCm: halfBallCm, pondShare, effect };
}
