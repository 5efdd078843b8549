import { curveOfMaterial, type Material } from "../ground/material.js";
import type { Horizon, Soil } from "../scenario/scenario.js";
import { headFromTension } from "../units.js";
import type { Prior } from "./prior.js";

/** Tension of field capacity here, kPa: what the default set was fitted to (5-15), and where a covered soil stands after two days. */
const fieldCapacityKPa = 10;
const wiltingKPa = 1500;

/**
 * A prior of water held between 10 and 1500 kPa, as a factor, for `field-capacity`; not among the default ones, since it bends the class's
 * curve and a bent curve has the floors of any soil. 0.8 to 1.2: our choice about the 35 % within which the default set meets published
 * available water; porosity stays, so that more water at field capacity is less air.
 *
 * @example fieldCapacityPrior.unit // "factor"
 */
export const fieldCapacityPrior: Prior = {
  id: "field-capacity",
  unit: "factor",
  spread: { kind: "triangular", from: 0.8, mode: 1, to: 1.2 },
  source: "our choice, no source: within what the default class curves miss of published available water",
};

/** A soil whose texture classes hold a factor more between 10 and 1500 kPa; others stay. @example soilHolding(soil, 1.1).horizons[0] */
export const soilHolding = (soil: Soil, factor: number | undefined): Soil =>
  factor === undefined ? soil : { ...soil, horizons: soil.horizons.map((horizon) => holding(horizon, factor)) };

function holding(horizon: Horizon, factor: number): Horizon {
  if (!("texture" in horizon)) return horizon;
  // The curve before structure and stones, for limits come before both.
  const { stonesFraction: _, structure: __, ...earth } = horizon;
  const curve = curveOfMaterial(earth satisfies Material, horizon.texture);
  const wiltingPoint = curve.thetaAt(headFromTension(wiltingKPa));
  const usual = curve.thetaAt(headFromTension(fieldCapacityKPa));
  return {
    ...horizon,
    limits: {
      fieldCapacity: wiltingPoint + factor * (usual - wiltingPoint),
      fieldCapacityTensionKPa: fieldCapacityKPa,
      wiltingPoint,
      saturation: curve.thetaSaturated,
    },
  };
}
