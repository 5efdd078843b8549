import { z } from "zod";

export type NeedCoverFile =
  | {
      rule:
        | "whole-ground"
        | "canopy-ground"
        | "density"
        | "relative-density"
        | "keller-karmeli"
        | "freeman-garzoli"
        | "decroix";
    }
  | { rule: "stated-cover"; coverFraction: number };

const simpleRules = [
  "whole-ground",
  "canopy-ground",
  "density",
  "relative-density",
  "keller-karmeli",
  "freeman-garzoli",
  "decroix",
] as const;

export const coverSchema: z.ZodType<NeedCoverFile> = z.discriminatedUnion("rule", [
  z.strictObject({ rule: z.enum(simpleRules).describe("On how much ground the coefficient counts.") }),
  z.strictObject({
    rule: z.literal("stated-cover"),
    coverFraction: z.number().gt(0).max(1).describe("Share of the ground that counts."),
  }),
]);
