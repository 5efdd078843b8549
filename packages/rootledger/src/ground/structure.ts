import type { SoilCurve } from "./curve.js";

/** How the fine earth is put together: pressed, as its texture usually is, or loose and full of crumbs. */
export type Structure = "tight" | "ordinary" | "crumbly";

/** By how much a structure word changes a soil's pores above about 8 kPa and its conductivity at saturation. */
export interface StructureFactors {
  readonly macroporeFactor: number;
  readonly kSatFactor: number;
}

/** Suction that bounds the pores structure makes, cm: 8 kPa, the wet end of the usual field capacity (8-10 kPa). */
export const macroporeSuctionCm = 81.6;

/** x/(1 - (1 - 1/f) x): leaves small x alone, takes 1 to f, never falls. */
const grown = (x: number, factor: number): number => x / (1 - (1 - 1 / factor) * x);

/**
 * The same soil with another structure. Pores that empty before 8 kPa are changed so that their sum becomes
 * macroporeFactor times what it was; theta at and beyond 8 kPa stays. K goes to kSatFactor times kSat at saturation and
 * keeps its dry branch: K' = K / (1 - (1 - 1/f) K/kSat). Form: our choice, no source; both maps keep curves monotone.
 * @throws RangeError when a factor is not above 0, or the pores would exceed the whole volume.
 * @example withStructure(curve, { macroporeFactor: 1.3, kSatFactor: 2 }, "crumbly loam")
 */
export function withStructure(
  curve: SoilCurve,
  { macroporeFactor, kSatFactor }: StructureFactors,
  name: string,
): SoilCurve {
  if (!(macroporeFactor > 0)) {
    throw new RangeError(`withStructure requires macroporeFactor above 0: got ${macroporeFactor}`);
  }
  if (!(kSatFactor > 0)) {
    throw new RangeError(`withStructure requires kSatFactor above 0: got ${kSatFactor}`);
  }
  const thetaKept = curve.thetaAt(-macroporeSuctionCm);
  const macropores = curve.thetaSaturated - thetaKept;
  const thetaSaturated = thetaKept + macroporeFactor * macropores;
  if (!(thetaSaturated < 1)) {
    throw new RangeError(`withStructure requires a saturated water content below 1: got ${thetaSaturated}`);
  }
  const kSatCmPerH = kSatFactor * curve.kSatCmPerH;
  return {
    name,
    source: `${curve.source}; structure: pores above 8 kPa x ${macroporeFactor}, kSat x ${kSatFactor}`,
    thetaSaturated,
    thetaResidual: curve.thetaResidual,
    kSatCmPerH,
    thetaAt(headCm) {
      if (headCm >= 0) return thetaSaturated;
      const theta = curve.thetaAt(headCm);
      if (headCm <= -macroporeSuctionCm || macropores <= 0) return theta;
      return thetaKept + macropores * grown((theta - thetaKept) / macropores, macroporeFactor);
    },
    capacityAt(headCm) {
      const capacity = curve.capacityAt(headCm);
      if (headCm <= -macroporeSuctionCm || headCm >= 0 || macropores <= 0) return capacity;
      const share = (curve.thetaAt(headCm) - thetaKept) / macropores;
      return capacity / (1 - (1 - 1 / macroporeFactor) * share) ** 2;
    },
    conductivityAt(headCm) {
      if (headCm >= 0) return kSatCmPerH;
      return curve.kSatCmPerH * grown(curve.conductivityAt(headCm) / curve.kSatCmPerH, kSatFactor);
    },
  };
}
