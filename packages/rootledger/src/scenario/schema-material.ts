import { z } from "zod";
import { type ClassCurveSet, classCurveSets } from "../ground/class-curves.js";
import type { Structure } from "../ground/structure.js";
import { textureClasses } from "../ground/texture.js";
import type { NearSaturation } from "../ground/van-genuchten.js";
import { defaults } from "./defaults.js";
import { between, openFraction, orDefault, positive } from "./schema-fields.js";

interface VanGenuchtenFile {
  thetaResidual: number;
  thetaSaturated: number;
  alphaPerCm: number;
  n: number;
  kSatCmPerH: number;
}

interface BrooksCoreyFile {
  thetaResidual: number;
  thetaSaturated: number;
  airEntryCm: number;
  lambda: number;
  kSatCmPerH: number;
}

interface ParticlesFile {
  sandFraction: number;
  clayFraction: number;
  organicMatterFraction: number;
  densityFactor?: number | undefined;
}

interface PointFile {
  tensionKPa: number;
  theta: number;
  conductivityCmPerH: number;
}

interface MeasuredLimitsFile {
  fieldCapacity: number;
  fieldCapacityTensionKPa: number;
  wiltingPoint: number;
  saturation?: number | undefined;
}

/** The ways to say what a horizon is made of; exactly one is given. */
export const materialWords = ["texture", "particles", "vanGenuchten", "brooksCorey", "points"] as const;

export interface MaterialFile {
  texture?: string | undefined;
  curveSet?: ClassCurveSet | undefined;
  limits?: MeasuredLimitsFile | undefined;
  particles?: ParticlesFile | undefined;
  vanGenuchten?: VanGenuchtenFile | undefined;
  nearSaturation?: NearSaturation | undefined;
  brooksCorey?: BrooksCoreyFile | undefined;
  points?: PointFile[] | undefined;
  structure?: Structure | undefined;
  stonesFraction?: number | undefined;
}

const thetaResidual = between(0, 0.5, "Water content at very high tension, m3/m3.");
const thetaSaturated = openFraction("Water content at saturation, m3/m3.");
const kSatCmPerH = positive(500, "Conductivity at saturation, cm/h.");
const fraction = (what: string): z.ZodType<number> => between(0, 1, what);

const vanGenuchtenSchema: z.ZodType<VanGenuchtenFile> = z.strictObject({
  thetaResidual,
  thetaSaturated,
  alphaPerCm: positive(1, "alpha of van Genuchten (1980), 1/cm."),
  n: z.number().gt(1).max(15).describe("n of van Genuchten (1980)."),
  kSatCmPerH,
});

const brooksCoreySchema: z.ZodType<BrooksCoreyFile> = z.strictObject({
  thetaResidual,
  thetaSaturated,
  airEntryCm: positive(500, "Suction at which air enters, cm (Brooks & Corey 1964)."),
  lambda: positive(10, "Pore-size index (Brooks & Corey 1964)."),
  kSatCmPerH,
});

const particlesSchema: z.ZodType<ParticlesFile> = z.strictObject({
  sandFraction: fraction("Sand by weight of the fine earth, 0.05 to 2 mm."),
  clayFraction: fraction("Clay by weight of the fine earth, below 0.002 mm."),
  organicMatterFraction: fraction("Organic matter by weight; organic carbon x 1.724 is usual."),
  densityFactor: between(0.9, 1.3, "Bulk density over the one the texture implies; 1 unless given.").optional(),
});

const pointSchema: z.ZodType<PointFile> = z.strictObject({
  tensionKPa: between(0, 1e6, "Tension, kPa; 0 in the first point, then rising."),
  theta: openFraction("Water content, m3/m3, falling."),
  conductivityCmPerH: positive(500, "Conductivity, cm/h, never rising."),
});

const limitsSchema: z.ZodType<MeasuredLimitsFile> = z.strictObject({
  fieldCapacity: openFraction("Water content at field capacity, m3/m3."),
  fieldCapacityTensionKPa: positive(100, "Tension at which it was read, kPa; 10 and 33 are usual."),
  wiltingPoint: openFraction("Water content at 1500 kPa, m3/m3."),
  saturation: openFraction("Water content at saturation, m3/m3; the class's large pores unless given.").optional(),
});

/** Fields of a horizon that say what it is made of. */
export const materialFields: { readonly [K in keyof MaterialFile]-?: z.ZodType<MaterialFile[K]> } = {
  texture: z
    .string()
    .max(120)
    .optional()
    .describe(`Texture class: ${textureClasses.join(", ")}.`),
  curveSet: z
    .enum(classCurveSets)
    .optional()
    .describe("Beside texture: whose curve stands for the class. Sets differ widely; their spread is an uncertainty."),
  limits: limitsSchema.optional().describe("Beside texture: measured limits that the class's curve is bent through."),
  particles: particlesSchema.optional().describe("Curve by Saxton & Rawls (2006) instead of a texture class."),
  vanGenuchten: vanGenuchtenSchema.optional().describe("Own curve instead of a texture class."),
  nearSaturation: z
    .enum(["raw", "linear", "minimum-capillary-height"])
    .optional()
    .describe(
      "Beside vanGenuchten: conductivity near saturation as the formula gives it, straight in the last centimetre (the usual where n < 1.5), or saturated down to 2 cm of suction.",
    ),
  brooksCorey: brooksCoreySchema.optional().describe("Own curve instead of a texture class."),
  points: z.array(pointSchema).min(2).max(200).optional().describe("Own table, wettest first, instead of a class."),
  structure: orDefault<Structure>(
    z
      .enum(["tight", "ordinary", "crumbly"])
      .describe("Scales large pores and conductivity of a texture class or of particles."),
    defaults.structure,
  ),
  stonesFraction: between(0, 0.9, "Share of the volume that stones fill; none unless given.").optional(),
};
