import { type GardnerConductivity, gardnerConductivityAt } from "../ground/gardner.js";
import type { Material } from "../ground/material.js";
import { type MeasuredPoint, measuredCurve } from "../ground/measured-curve.js";

/** A retention curve of one's own with a conductivity curve. Heads in cm, 0 or below. */
export interface OwnCurve {
  /** Water content at a head, m3/m3; never rising as the head falls. */
  readonly thetaAt: (headCm: number) => number;
  /** Conductivity at a head, cm/h, above 0 and never rising as the head falls; or the parameters of Gardner's K = kSat / (1 + (|h|/hk)^eta). */
  readonly conductivity: ((headCm: number) => number) | GardnerConductivity;
}

/** Table points: 0 and evenly in ln|h| from 0.1 cm to 160,000 cm (16 MPa). */
const wettestCm = 0.1;
const driestCm = 1.6e5;
const pointCount = 600;
/** Where a curve is level, as below an air-entry head, the table falls by this much from point to point, m3/m3. */
const levelFall = 1e-10;
/** The table may miss the function by this, m3/m3; our choice, a tenth of what probes resolve. */
const mostThetaMiss = 1e-3;

/**
 * Turns any retention curve that never rises as the soil dries into a horizon's material: a table of 601 points from saturation to
 * 16 MPa, plain data that goes where a scenario goes. Between points the table is a monotone cubic in ln(1 + |h|).
 *
 * @throws RangeError naming the head at which theta rises, leaves 0 to 1, or K rises or is not above 0; or if a jump is too steep for
 * the table, which may miss theta by 0.001 at most.
 * @example ownCurve({ thetaAt: (h) => 0.1 + 0.35 / (1 - h / 50), conductivity: { kSatCmPerH: 2, halfHeadCm: 15, exponent: 2.5 } }).points.length // 601
 */
export function ownCurve({ thetaAt, conductivity }: OwnCurve): Extract<Material, { points: unknown }> {
  const conductivityAt =
    typeof conductivity === "function" ? conductivity : (h: number) => gardnerConductivityAt(conductivity, h);
  const step = Math.log(driestCm / wettestCm) / (pointCount - 1);
  const headOf = (i: number): number => (i === 0 ? 0 : -wettestCm * Math.exp(step * (i - 1)));
  const points: MeasuredPoint[] = [];
  for (let i = 0; i <= pointCount; i++) {
    const headCm = headOf(i);
    const theta = thetaAt(headCm);
    const conductivityCmPerH = conductivityAt(headCm);
    const before = points[i - 1];
    if (!(theta > 0 && theta < 1)) refuse("theta between 0 and 1", headCm, theta);
    if (!(conductivityCmPerH > 0 && Number.isFinite(conductivityCmPerH))) {
      refuse("a finite conductivity above 0 cm/h", headCm, conductivityCmPerH);
    }
    if (before === undefined) {
      points.push({ headCm, theta, conductivityCmPerH });
      continue;
    }
    if (theta > before.theta + pointCount * levelFall) refuse("theta that never rises as soil dries", headCm, theta);
    if (conductivityCmPerH > before.conductivityCmPerH) {
      refuse("conductivity that never rises as soil dries", headCm, conductivityCmPerH);
    }
    const level = before.theta - levelFall;
    points.push({ headCm, theta: theta < level ? theta : level, conductivityCmPerH });
  }
  const table = measuredCurve("own curve", points, "given by the user");
  for (let i = 1; i <= pointCount; i++) {
    const headCm = i === 1 ? -0.5 * wettestCm : -Math.sqrt(headOf(i) * headOf(i - 1));
    const miss = Math.abs(table.thetaAt(headCm) - thetaAt(headCm));
    if (!(miss <= mostThetaMiss)) refuse("a curve without jumps, met by its table within 0.001", headCm, miss);
  }
  return { points };
}

function refuse(rule: string, headCm: number, got: number): never {
  throw new RangeError(`ownCurve requires ${rule}: got ${got} at head ${headCm} cm`);
}
