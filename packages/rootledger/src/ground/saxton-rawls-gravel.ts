/** What stones do to a fine earth, from Saxton & Rawls (2006), eqs 19-22 (gravel) and 23-24 (salinity). */
export interface GravelEffect {
  readonly gravelVolumeFraction: number;
  readonly bulkDensityGPerCm3: number;
  /** Water per volume of the whole soil over water per volume of fine earth. */
  readonly waterRatio: number;
  /** kSat of the whole soil over kSat of the fine earth. */
  readonly kSatRatio: number;
}

const particleDensityGPerCm3 = 2.65;

/**
 * Gravel by weight to what it does: Rv = a Rw/(1 - Rw(1 - a)), Kb/Ks = (1 - Rw)/(1 - Rw(1 - 1.5 a)), a = density/2.65.
 * @throws RangeError when the weight fraction is not in [0, 1) or the density not in (0, 2.65).
 * @example saxtonRawlsGravel({ gravelWeightFraction: 0.3, densityGPerCm3: 1.43 })
 */
export function saxtonRawlsGravel(input: {
  readonly gravelWeightFraction: number;
  /** Density of the fine earth. */
  readonly densityGPerCm3: number;
}): GravelEffect {
  const { gravelWeightFraction: Rw, densityGPerCm3 } = input;
  if (!(Rw >= 0 && Rw < 1)) {
    throw new RangeError(`saxtonRawlsGravel requires gravelWeightFraction in [0, 1): got ${Rw}`);
  }
  if (!(densityGPerCm3 > 0 && densityGPerCm3 < particleDensityGPerCm3)) {
    throw new RangeError(`saxtonRawlsGravel requires densityGPerCm3 between 0 and 2.65: got ${densityGPerCm3}`);
  }
  const a = densityGPerCm3 / particleDensityGPerCm3;
  const Rv = (a * Rw) / (1 - Rw * (1 - a));
  return {
    gravelVolumeFraction: Rv,
    bulkDensityGPerCm3: densityGPerCm3 * (1 - Rv) + particleDensityGPerCm3 * Rv,
    waterRatio: 1 - Rv,
    kSatRatio: (1 - Rw) / (1 - Rw * (1 - 1.5 * a)),
  };
}

/**
 * Osmotic tension of the soil water, kPa: 36 EC at saturation, concentrated as the soil dries, 36 EC thetaS/theta.
 * EC is that of the saturation extract, dS/m. @example osmoticTensionKPa({ ecDsPerM: 2, thetaSaturated: 0.46, theta: 0.28 }) // 118.29
 */
export function osmoticTensionKPa(input: {
  readonly ecDsPerM: number;
  readonly thetaSaturated: number;
  readonly theta: number;
}): number {
  if (!(input.ecDsPerM >= 0)) {
    throw new RangeError(`osmoticTensionKPa requires ecDsPerM from 0: got ${input.ecDsPerM}`);
  }
  if (!(input.theta > 0 && input.theta <= input.thetaSaturated)) {
    throw new RangeError(`osmoticTensionKPa requires theta above 0 and up to thetaSaturated: got ${input.theta}`);
  }
  return (36 * input.ecDsPerM * input.thetaSaturated) / input.theta;
}
