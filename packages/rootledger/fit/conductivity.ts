import { drainCovered } from "../src/ground/covered-drain.js";
import type { SoilCurve } from "../src/ground/curve.js";
import type { GardnerConductivity } from "../src/ground/gardner.js";
import { gardnerCurve } from "../src/ground/gardner-curve.js";
import type { Texture } from "../src/ground/texture.js";
import type { VanGenuchtenRetention } from "../src/ground/van-genuchten-retention.js";
import { tensionFromHead } from "../src/units.js";
import { columnCm, drainedTensionKPa, drainHours, rootMatCm } from "./facts.js";
import { falsePosition } from "./false-position.js";
import { rounded } from "./retention.js";

/**
 * Exponent of the conductivity's dry branch: 4 in sand, near 2 in clay and silt (Gardner 1958 gives 2 for clay to 4 for
 * sand; from memory). The smooth form between them is our choice.
 */
export const exponentFor = ({ sandFraction, clayFraction }: Texture): number =>
  rounded(2 + 2.64 * sandFraction * Math.exp(-3 * clayFraction));

/** Mean tension of the root mat after the covered drain, kPa. */
export function drainedTension(curve: SoilCurve, depthCm = columnCm): number {
  const column = drainCovered([{ curve, thicknessCm: depthCm }], { hours: drainHours });
  const cells = Math.round(rootMatCm / column.cellCm);
  let sum = 0;
  for (let i = 0; i < cells; i++) sum += tensionFromHead(column.headCm[i]);
  return sum / cells;
}

/** kSat and the exponent are given; the half-head is what brings the root mat to the drained tension (it rises with it). */
export function fitConductivity(
  retention: VanGenuchtenRetention,
  kSatCmPerH: number,
  exponent: number,
): GardnerConductivity {
  const excessKPa = (logHalfHead: number): number =>
    drainedTension(
      gardnerCurve({ ...retention, kSatCmPerH, halfHeadCm: Math.exp(logHalfHead), exponent }, "trial", "fit"),
    ) - drainedTensionKPa;
  const logHalfHead = falsePosition(excessKPa, Math.log(5), Math.log(60));
  return { kSatCmPerH, halfHeadCm: rounded(Math.exp(logHalfHead)), exponent };
}
