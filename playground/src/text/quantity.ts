import { m2PerHa } from "rootledger/units";
import { amount } from "./number-format.js";
import { type Quantity, unitOf } from "./units-shown.js";

/** A number of the model in the unit chosen for its kind. @example shownIn("water", 3.785) // 1 */
export const shownIn = (quantity: Quantity, value: number): number => value / unitOf(quantity).holds;

/** The unit alone. */
export const unitText = (quantity: Quantity): string => unitOf(quantity).text;

const said = (quantity: Quantity, value: number, digits: number): string =>
  `${amount(shownIn(quantity, value), digits)} ${unitText(quantity)}`;

/** @example waterText(133) // "133 L" */
export const waterText = (value: number, digits = 3): string => said("water", value, digits);
/** @example depthText(12.4) // "12.4 mm" */
export const depthText = (valueMm: number, digits = 3): string => said("depth", valueMm, digits);
/** @example tensionText(20) // "20 kPa" */
export const tensionText = (valueKPa: number, digits = 2): string => said("tension", valueKPa, digits);

/** Water over the unit of ground that is chosen. @example areaWaterText(58.7) // "58.7 m³/ha" */
export const areaWaterText = (m3PerHa: number): string =>
  `${amount((m3PerHa * unitOf("area").holds) / m2PerHa)} m³/${unitText("area")}`;

/** A bare number, for columns whose head has the unit. */
export const bare = (quantity: Quantity, value: number, digits = 3): string => amount(shownIn(quantity, value), digits);

const kindOfUnit: Readonly<Record<string, Quantity | undefined>> = { L: "water", mm: "depth" };

/** A measure's value in the unit that is shown for the unit it was computed in. @example measured(1, "L") // 1 */
export function measured(value: number, unit: string): number {
  const kind = kindOfUnit[unit];
  return kind === undefined ? value : shownIn(kind, value);
}

/** Name of the unit that `measured` gives; `names` says those that cannot be chosen. */
export function measuredUnit(unit: string, names: Readonly<Record<string, string>>): string {
  const kind = kindOfUnit[unit];
  return kind === undefined ? (names[unit] ?? unit) : unitText(kind);
}
