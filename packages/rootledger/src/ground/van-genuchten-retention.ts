/** Retention by van Genuchten (1980), SSSAJ 44:892-898, eq. 3, with m = 1 - 1/n. */
export interface VanGenuchtenRetention {
  readonly thetaResidual: number;
  readonly thetaSaturated: number;
  /** Inverse of a suction scale, 1/cm. */
  readonly alphaPerCm: number;
  /** Shape, above 1. */
  readonly n: number;
}

/**
 * @throws RangeError unless n > 1, alphaPerCm > 0 and 0 <= thetaResidual < thetaSaturated < 1.
 */
export function requireRetention(what: string, p: VanGenuchtenRetention): void {
  requireThetaRange(what, p.thetaResidual, p.thetaSaturated);
  if (!(p.n > 1)) throw new RangeError(`${what} requires n above 1: got ${p.n}`);
  if (!(p.alphaPerCm > 0)) {
    throw new RangeError(`${what} requires alphaPerCm above 0: got ${p.alphaPerCm}`);
  }
}

/** @throws RangeError unless 0 <= thetaResidual < thetaSaturated < 1. */
export function requireThetaRange(what: string, thetaResidual: number, thetaSaturated: number): void {
  if (!(thetaResidual >= 0 && thetaResidual < thetaSaturated && thetaSaturated < 1)) {
    throw new RangeError(
      `${what} requires 0 <= thetaResidual < thetaSaturated < 1: got ${thetaResidual}, ${thetaSaturated}`,
    );
  }
}

/** Effective saturation (1 + (alpha |h|)^n)^-m; 1 at and above zero head. @example effectiveSaturation(retention, -100) */
export function effectiveSaturation(p: VanGenuchtenRetention, headCm: number): number {
  if (headCm >= 0) return 1;
  return (1 + (-p.alphaPerCm * headCm) ** p.n) ** (1 / p.n - 1);
}

/** theta = thetaResidual + (thetaSaturated - thetaResidual) Se. @example retentionTheta(retention, -100) */
export function retentionTheta(p: VanGenuchtenRetention, headCm: number): number {
  return p.thetaResidual + (p.thetaSaturated - p.thetaResidual) * effectiveSaturation(p, headCm);
}

/** Slope d(theta)/d(head), 1/cm; zero at and above zero head. @example retentionCapacity(retention, -100) */
export function retentionCapacity(p: VanGenuchtenRetention, headCm: number): number {
  if (headCm >= 0) return 0;
  const x = -p.alphaPerCm * headCm;
  return (
    (p.thetaSaturated - p.thetaResidual) * (p.n - 1) * p.alphaPerCm * x ** (p.n - 1) * (1 + x ** p.n) ** (1 / p.n - 2)
  );
}
