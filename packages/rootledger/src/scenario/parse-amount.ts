import type { Amount } from "../programme/rule.js";
import { type Fault, fault } from "./faults.js";
import { type AmountFile, type AmountUnit, amountUnits } from "./schema-amount.js";

/** No amount where one is needed, or more than one. */
export function amountFaults(file: AmountFile, path: string, need: "needed" | "optional"): Fault[] {
  const given = amountUnits.filter((unit) => file[unit] !== undefined).length;
  if (given === 1 || (given === 0 && need === "optional")) return [];
  return [fault("exactly-one-of", path, file, { options: amountUnits.join(", ") })];
}

/** 1 mm is 1 L on a square metre, 1 m3 per hectare a tenth of that. @example amountIn("mm", 5, 24) // { litresPerTree: 120 } */
export function amountIn(unit: AmountUnit, amount: number, groundM2: number): Amount {
  if (unit === "minutes") return { minutes: amount };
  if (unit === "litresPerTree") return { litresPerTree: amount };
  return { litresPerTree: amount * groundM2 * (unit === "mm" ? 1 : 0.1) };
}

/** The amount that a file gives, if it gives one. */
export function amountOf(file: AmountFile, groundM2: number): Amount | undefined {
  for (const unit of amountUnits) {
    const amount = file[unit];
    if (amount !== undefined) return amountIn(unit, amount, groundM2);
  }
  return undefined;
}
