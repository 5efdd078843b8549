import type { SoilCurve } from "./curve.js";
import {
  type FieldCapacity,
  fieldCapacityAssoulineOr,
  fieldCapacityAtTension,
  fieldCapacityByDrain,
  fieldCapacityByFlux,
  fieldCapacityTwarakavi,
} from "./field-capacity.js";
import type { VanGenuchten } from "./van-genuchten.js";

/** What field capacity may be taken to be. */
export type FieldCapacityCriterion =
  | "covered-drain-48-h"
  | "flux-0.1-cm-per-d"
  | "flux-0.01-cm-per-d"
  | "10-kpa"
  | "33-kpa"
  | "twarakavi-2009"
  | "assouline-or-2014";

export interface NamedFieldCapacity extends FieldCapacity {
  readonly criterion: FieldCapacityCriterion;
}

/**
 * One soil's field capacity by every criterion side by side. The last two need van Genuchten-Mualem parameters and are
 * left out without them, as is a flux the soil never conducts.
 * @example fieldCapacities(carselParrishCurve("sand"), carselParrishParameters("sand"))
 */
export function fieldCapacities(curve: SoilCurve, parameters?: VanGenuchten): NamedFieldCapacity[] {
  const drained = fieldCapacityByDrain([{ toCm: 100, curve }]);
  const found: NamedFieldCapacity[] = [
    { criterion: "covered-drain-48-h", theta: drained.theta, tensionKPa: drained.tensionKPa },
  ];
  const add = (criterion: FieldCapacityCriterion, capacity: FieldCapacity): void => {
    found.push({ criterion, ...capacity });
  };
  if (24 * curve.kSatCmPerH > 0.1) add("flux-0.1-cm-per-d", fieldCapacityByFlux(curve, 0.1));
  if (24 * curve.kSatCmPerH > 0.01) add("flux-0.01-cm-per-d", fieldCapacityByFlux(curve, 0.01));
  add("10-kpa", fieldCapacityAtTension(curve, 10));
  add("33-kpa", fieldCapacityAtTension(curve, 33));
  if (parameters !== undefined) {
    add("twarakavi-2009", fieldCapacityTwarakavi(parameters));
    add("assouline-or-2014", fieldCapacityAssoulineOr(parameters));
  }
  return found;
}
