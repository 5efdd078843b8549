import type { z } from "zod";
import { positive } from "./schema-fields.js";

/** Water of one run; exactly one of them. */
export interface AmountFile {
  minutes?: number | undefined;
  litresPerTree?: number | undefined;
  mm?: number | undefined;
  m3PerHa?: number | undefined;
}

export const amountUnits = ["minutes", "litresPerTree", "mm", "m3PerHa"] as const;
export type AmountUnit = (typeof amountUnits)[number];

export const amountFields: Readonly<Record<AmountUnit, z.ZodType<number | undefined>>> = {
  minutes: positive(20000, "Length of all pulses together, minutes.").optional(),
  litresPerTree: positive(100000, "Water of all pulses together, L per tree.").optional(),
  mm: positive(1000, "Water of all pulses together, mm over the whole ground.").optional(),
  m3PerHa: positive(10000, "Water of all pulses together, m3 per hectare.").optional(),
};

export const oneAmount: { required: string[] }[] = amountUnits.map((unit) => ({ required: [unit] }));
