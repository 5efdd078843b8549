import { monotoneCubic } from "../numeric/monotone-cubic.js";
import type { SoilCurve } from "./curve.js";

/** One line of a table of one's own, wettest first. */
export interface MeasuredPoint {
  /** 0 in the first point, falling. */
  readonly headCm: number;
  /** Falling. */
  readonly theta: number;
  /** Above 0, never rising. */
  readonly conductivityCmPerH: number;
}

/**
 * A curve through measured points. theta and ln K are monotone cubics in ln(1 + |h|); drier than the last point both go
 * on as power laws of |h| with the slope they have there, so theta tends to 0.
 * @throws RangeError naming the first point that breaks a rule: at least two points, the first at head 0, heads and
 * theta falling, theta in (0, 1), K above 0 and never rising.
 * @example measuredCurve("my loam", points, "own laboratory, 2020").thetaAt(-100)
 */
export function measuredCurve(name: string, points: readonly MeasuredPoint[], source: string): SoilCurve {
  requirePoints(points);
  const xs = points.map(({ headCm }) => Math.log1p(-headCm));
  const thetaCubic = monotoneCubic(
    xs,
    points.map(({ theta }) => theta),
  );
  const lnKCubic = monotoneCubic(
    xs,
    points.map(({ conductivityCmPerH }) => Math.log(conductivityCmPerH)),
  );
  const first = points[0];
  const last = points[points.length - 1];
  const lastX = xs[xs.length - 1];
  const thetaPower = -thetaCubic.slopeAt(lastX) / last.theta;
  return {
    name,
    source,
    thetaSaturated: first.theta,
    thetaResidual: 0,
    kSatCmPerH: first.conductivityCmPerH,
    thetaAt(headCm) {
      if (headCm >= 0) return first.theta;
      const x = Math.log1p(-headCm);
      return x > lastX ? last.theta * Math.exp(-thetaPower * (x - lastX)) : thetaCubic.at(x);
    },
    capacityAt(headCm) {
      if (headCm >= 0) return 0;
      const x = Math.log1p(-headCm);
      const slope = x > lastX ? -thetaPower * last.theta * Math.exp(-thetaPower * (x - lastX)) : thetaCubic.slopeAt(x);
      return -slope / (1 - headCm);
    },
    conductivityAt: (headCm) => (headCm >= 0 ? first.conductivityCmPerH : Math.exp(lnKCubic.at(Math.log1p(-headCm)))),
  };
}

function requirePoints(points: readonly MeasuredPoint[]): void {
  const refuse = (rule: string, got: string): never => {
    throw new RangeError(`measuredCurve requires ${rule}: got ${got}`);
  };
  if (points.length < 2) refuse("at least two points", `${points.length}`);
  if (points[0].headCm !== 0) refuse("headCm 0 in the first point", `${points[0].headCm}`);
  points.forEach(({ headCm, theta, conductivityCmPerH }, i) => {
    if (!Number.isFinite(headCm)) refuse(`a finite headCm in point ${i}`, `${headCm}`);
    if (!(theta > 0 && theta < 1)) refuse(`theta between 0 and 1 in point ${i}`, `${theta}`);
    if (!(conductivityCmPerH > 0 && Number.isFinite(conductivityCmPerH))) {
      refuse(`conductivityCmPerH above 0 in point ${i}`, `${conductivityCmPerH}`);
    }
    if (i === 0) return;
    const before = points[i - 1];
    if (!(headCm < before.headCm)) {
      refuse(`headCm falling from point ${i - 1} to ${i}`, `${before.headCm}, ${headCm}`);
    }
    if (!(theta < before.theta)) {
      refuse(`theta falling from point ${i - 1} to ${i}`, `${before.theta}, ${theta}`);
    }
    if (!(conductivityCmPerH <= before.conductivityCmPerH)) {
      refuse(
        `conductivityCmPerH not rising from point ${i - 1} to ${i}`,
        `${before.conductivityCmPerH}, ${conductivityCmPerH}`,
      );
    }
  });
}
