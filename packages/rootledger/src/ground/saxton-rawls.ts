import { cmPerKPa } from "../units.js";
import type { SoilCurve } from "./curve.js";
import type { Texture } from "./texture.js";

export interface SaxtonRawlsInput extends Texture {
  /** By weight, 0-1 (the paper's percent divided by 100). */
  readonly organicMatterFraction: number;
  /** Bulk density over the one the texture implies; 1 unless given, 0.9 (loose) to 1.3 (compacted). */
  readonly densityFactor?: number;
}

/** Where an input is beyond the data of the equations. */
export type SaxtonRawlsNote =
  | "air-entry-raised"
  | "clay-above-fitted-range"
  | "organic-matter-above-fitted-range"
  | "density-outside-fitted-range";

/** What the equations give for one soil. */
export interface SaxtonRawlsSoil {
  readonly theta1500: number;
  readonly theta33: number;
  /** Water held between saturation and 33 kPa before the last correction; what the air-entry equation takes. */
  readonly firstThetaSaturatedTo33: number;
  /** Tension at which air enters, kPa, as the equation gives it; below zero in very sandy soil. */
  readonly computedAirEntryKPa: number;
  /** The tension the curve uses: the computed one, or the floor of 0.1 kPa (then `notes` says so). */
  readonly airEntryKPa: number;
  readonly thetaSaturated: number;
  readonly densityGPerCm3: number;
  /** Slope of the logarithmic tension-moisture curve, 1/B. */
  readonly lambda: number;
  readonly kSatCmPerH: number;
  readonly notes: readonly SaxtonRawlsNote[];
}

/** Particle density used by the paper, g/cm3. */
const particleDensityGPerCm3 = 2.65;
/** The equation turns negative in sand and loamy sand; a curve needs a positive value. Our choice, no source. */
const airEntryFloorKPa = 0.1;

/**
 * Soil water characteristics from texture, organic matter and density.
 * Source: Saxton & Rawls (2006), SSSAJ 70:1569-1578, eqs 1-10 and 16; fitted to organic matter up to 8 %, clay up to
 * 60 % and density 1.0-1.8 g/cm3 (limits from memory): beyond them the result carries a note.
 * @throws RangeError when a fraction or the density factor is outside its range, or the regressions leave no pores
 * between 1500 kPa, 33 kPa and saturation.
 * @example saxtonRawls({ sandFraction: 0.4, clayFraction: 0.2, organicMatterFraction: 0.025 }).theta33 // 0.2796
 */
export function saxtonRawls(input: SaxtonRawlsInput): SaxtonRawlsSoil {
  const { sandFraction: S, clayFraction: C, organicMatterFraction, densityFactor = 1 } = input;
  requireInput(input, densityFactor);
  const OM = 100 * organicMatterFraction;

  const t1500 = -0.024 * S + 0.487 * C + 0.006 * OM + 0.005 * S * OM - 0.013 * C * OM + 0.068 * S * C + 0.031;
  const theta1500 = t1500 + (0.14 * t1500 - 0.02);
  const t33 = -0.251 * S + 0.195 * C + 0.011 * OM + 0.006 * S * OM - 0.027 * C * OM + 0.452 * S * C + 0.299;
  const usualTheta33 = t33 + (1.283 * t33 * t33 - 0.374 * t33 - 0.015);
  const ts33 = 0.278 * S + 0.034 * C + 0.022 * OM - 0.018 * S * OM - 0.027 * C * OM - 0.584 * S * C + 0.078;
  const firstThetaSaturatedTo33 = ts33 + (0.636 * ts33 - 0.107);
  const X = firstThetaSaturatedTo33;
  const pet = -21.67 * S - 27.93 * C - 81.97 * X + 71.12 * S * X + 8.29 * C * X + 14.05 * S * C + 27.16;
  const computedAirEntryKPa = pet + (0.02 * pet * pet - 0.113 * pet - 0.7);
  const usualThetaSaturated = usualTheta33 + X - 0.097 * S + 0.043;

  const densityGPerCm3 = particleDensityGPerCm3 * (1 - usualThetaSaturated) * densityFactor;
  const thetaSaturated = 1 - densityGPerCm3 / particleDensityGPerCm3;
  const theta33 = usualTheta33 - 0.2 * (usualThetaSaturated - thetaSaturated);
  requirePores(theta1500, theta33, thetaSaturated);
  const lambda = (Math.log(theta33) - Math.log(theta1500)) / (Math.log(1500) - Math.log(33));
  const kSatMmPerH = 1930 * (thetaSaturated - theta33) ** (3 - lambda);

  const notes: SaxtonRawlsNote[] = [];
  if (computedAirEntryKPa < airEntryFloorKPa) notes.push("air-entry-raised");
  if (C > 0.6) notes.push("clay-above-fitted-range");
  if (OM > 8) notes.push("organic-matter-above-fitted-range");
  if (densityGPerCm3 < 1 || densityGPerCm3 > 1.8) notes.push("density-outside-fitted-range");
  return {
    theta1500,
    theta33,
    firstThetaSaturatedTo33,
    computedAirEntryKPa,
    airEntryKPa: Math.max(computedAirEntryKPa, airEntryFloorKPa),
    thetaSaturated,
    densityGPerCm3,
    lambda,
    kSatCmPerH: kSatMmPerH / 10,
    notes,
  };
}

function requireInput(input: SaxtonRawlsInput, densityFactor: number): void {
  const { sandFraction, clayFraction, organicMatterFraction } = input;
  for (const [name, value] of Object.entries({
    sandFraction,
    clayFraction,
    organicMatterFraction,
  })) {
    if (!(value >= 0 && value <= 1)) {
      throw new RangeError(`saxtonRawls requires ${name} from 0 to 1: got ${value}`);
    }
  }
  if (sandFraction + clayFraction > 1 + 1e-9) {
    throw new RangeError(
      `saxtonRawls requires sandFraction + clayFraction up to 1: got ${sandFraction + clayFraction}`,
    );
  }
  if (!(densityFactor >= 0.9 && densityFactor <= 1.3)) {
    throw new RangeError(`saxtonRawls requires densityFactor from 0.9 to 1.3: got ${densityFactor}`);
  }
}

function requirePores(theta1500: number, theta33: number, thetaSaturated: number): void {
  if (!(theta1500 > 0 && theta1500 < theta33 && theta33 < thetaSaturated && thetaSaturated < 1)) {
    throw new RangeError(
      `saxtonRawls requires 0 < theta1500 < theta33 < thetaSaturated < 1, which this texture, organic matter and density do not give: got ${theta1500}, ${theta33}, ${thetaSaturated}`,
    );
  }
}

/**
 * The paper's curve: power law from 1500 to 33 kPa (and beyond), straight line from 33 kPa to air entry, saturated from
 * there; K = kSat (theta/thetaSaturated)^(3 + 2/lambda). Source: Saxton & Rawls (2006), eqs 11-17.
 * @throws RangeError when the air entry is not below 33 kPa.
 * @example saxtonRawlsCurve(saxtonRawls({ sandFraction: 0.4, clayFraction: 0.2, organicMatterFraction: 0.025 }), "loam").thetaAt(-336.6) // 0.2796
 */
export function saxtonRawlsCurve(soil: SaxtonRawlsSoil, name: string): SoilCurve {
  const { theta33, thetaSaturated, airEntryKPa, lambda, kSatCmPerH } = soil;
  if (!(airEntryKPa < 33)) {
    throw new RangeError(`saxtonRawlsCurve requires an air entry below 33 kPa: got ${soil.airEntryKPa}`);
  }
  const slopePerKPa = (thetaSaturated - theta33) / (33 - airEntryKPa);
  const kExponent = 3 + 2 / lambda;
  const thetaAtKPa = (kPa: number): number => {
    if (kPa >= 33) return theta33 * (kPa / 33) ** -lambda;
    return kPa > airEntryKPa ? theta33 + slopePerKPa * (33 - kPa) : thetaSaturated;
  };
  return {
    name,
    source: "Saxton & Rawls (2006), SSSAJ 70:1569-1578",
    thetaSaturated,
    thetaResidual: 0,
    kSatCmPerH,
    thetaAt: (headCm) => thetaAtKPa(-headCm / cmPerKPa),
    capacityAt(headCm) {
      const kPa = -headCm / cmPerKPa;
      if (kPa >= 33) return (lambda * thetaAtKPa(kPa)) / -headCm;
      return kPa > airEntryKPa ? slopePerKPa / cmPerKPa : 0;
    },
    conductivityAt: (headCm) =>
      headCm >= 0 ? kSatCmPerH : kSatCmPerH * (thetaAtKPa(-headCm / cmPerKPa) / thetaSaturated) ** kExponent,
  };
}
