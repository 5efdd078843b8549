import { z } from "zod";
import type { Antecedent } from "../water/curve-number.js";
import type { Surface, SurfaceLayer } from "./scenario.js";
import { between, orDefault } from "./schema-fields.js";
import { surfaceDefaults } from "./surface-defaults.js";

type Where = SurfaceLayer["where"];

export type LayerFile =
  | {
      kind: "litter";
      massKgPerM2: number;
      litterfallKgPerM2Year?: number | undefined;
      decayPerYear?: number | undefined;
      where?: Where | undefined;
    }
  | { kind: "organic-mulch"; thicknessCm: number; coverFraction?: number | undefined; where?: Where | undefined }
  | { kind: "gravel"; thicknessCm: number; where?: Where | undefined };

export interface SurfaceFile {
  evaporation?: Surface["evaporation"] | undefined;
  evaporableDepthCm?: number | undefined;
  canopyStorageMm?: number | undefined;
  layer?: LayerFile | undefined;
  runoff?: { curveNumber: number; antecedent?: Antecedent | undefined } | undefined;
}

const where = (usual: (typeof surfaceDefaults)["litterWhere" | "mulchWhere"]) =>
  orDefault<Where>(z.enum(["under-canopy", "all-ground"]).describe("Where the layer lies."), usual);

const layerSchema: z.ZodType<LayerFile> = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("litter"),
    massKgPerM2: between(0, 20, "Dry leaves on the ground at the start of the season, kg/m2; 0 under new trees."),
    litterfallKgPerM2Year: orDefault(
      between(0, 5, "Dry leaves that fall in a year, kg/m2; the layer thickens until as much rots as falls."),
      surfaceDefaults.litterfallKgPerM2Year,
    ),
    decayPerYear: orDefault(
      z.number().gt(0).max(10).describe("Rate of rotting, 1/year: mass falls by exp(-rate) in a year without leaves."),
      surfaceDefaults.decayPerYear,
    ),
    where: where(surfaceDefaults.litterWhere),
  }),
  z.strictObject({
    kind: z.literal("organic-mulch"),
    thicknessCm: between(0.5, 30, "Thickness of loose organic mulch, cm; it holds about 1 mm of rain per cm."),
    coverFraction: orDefault(between(0, 1, "Share of the ground it hides."), surfaceDefaults.mulchCoverFraction),
    where: where(surfaceDefaults.mulchWhere),
  }),
  z.strictObject({
    kind: z.literal("gravel"),
    thicknessCm: between(0, 10, "Thickness of gravel or tephra, cm; it holds no rain."),
    where: where(surfaceDefaults.mulchWhere),
  }),
]);

export const surfaceSchema: z.ZodType<SurfaceFile> = z.strictObject({
  evaporation: orDefault<Surface["evaporation"]>(
    z
      .enum(["soil-limited", "two-stage"])
      .describe("How the bare soil dries; two-stage is FAO-56's Kr from REW and TEW. One or the other, never both."),
    surfaceDefaults.evaporation,
  ),
  evaporableDepthCm: orDefault(
    between(5, 20, "Depth that evaporation dries, cm; with two-stage."),
    surfaceDefaults.evaporableDepthCm,
  ),
  canopyStorageMm: orDefault(
    between(0, 5, "Rain that a closed canopy holds, mm of the ground it covers; dry again before the next day."),
    surfaceDefaults.canopyStorageMm,
  ),
  layer: layerSchema
    .optional()
    .describe("What lies on the soil: less evaporation, light rain held back, drip under it not. Off unless given."),
  runoff: z
    .strictObject({
      curveNumber: between(30, 100, "Curve number of the ground, usual antecedent condition."),
      antecedent: orDefault<Antecedent>(
        z.enum(["dry", "usual", "wet"]).describe("Antecedent condition of all days."),
        surfaceDefaults.antecedent,
      ),
    })
    .optional()
    .describe(
      "Run-off of a day's rain by curve number in place of rain intensity against the soil's intake; the rest falls evenly over the day. Off unless given.",
    ),
});
