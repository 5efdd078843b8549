import { z } from "zod";
import { defaults } from "./defaults.js";
import { type TreeDemandFile, treeDemandFields } from "./schema-crop.js";
import { between, isoDate, monthDay, named, orDefault, positive, whole } from "./schema-fields.js";
import { type BallFile, ballSchema, type RootsFile, rootsSchema } from "./schema-roots.js";
import { type SaltFile, type SoilNitrogenFile, saltSchema, soilNitrogenSchema } from "./schema-solutes.js";
import { type SurfaceFile, surfaceSchema } from "./schema-surface.js";

export interface LinesFile {
  offsetsM: number[];
  emitterSpacingM: number;
  emitterFlowLPerH: number;
  pluggedPerTree?: number | undefined;
  lowQuarterUniformityFraction?: number | undefined;
  catches?: CatchesFile | undefined;
  drainOut?: DrainOutFile | undefined;
}

/** A catch-can test: what single emitters gave in one time, or their flows. */
export interface CatchesFile {
  volumesMl?: number[] | undefined;
  flowsLPerH?: number[] | undefined;
}

export interface DrainOutFile {
  innerDiameterMm: number;
  drainHours?: number | undefined;
  lowTreesFraction?: number | undefined;
}

export interface LimitsFile extends OwnLimitsFile {
  pullLimitLowDemandKPa?: number | undefined;
  periods?: LimitPeriodFile[] | undefined;
}

export interface LimitPeriodFile extends OwnLimitsFile {
  name: string;
  from: string;
  to: string;
}

/** Limits that a period may replace. */
interface OwnLimitsFile {
  pullLimitKPa?: number | undefined;
  zeroUptakeKPa?: number | undefined;
  airLimitFraction?: number | undefined;
  airZeroFraction?: number | undefined;
  airReturnKPa?: number | undefined;
}

export interface TreeFile extends TreeDemandFile {
  name: string;
  canopyDiameterM: number;
  kcb?: { date: string; kcb: number }[] | undefined;
  roots?: RootsFile | undefined;
  ball?: BallFile | undefined;
  limits?: LimitsFile | undefined;
}

export interface BlockFile {
  treeSpacingM: number;
  rowSpacingM: number;
  tree: TreeFile;
  lines: LinesFile;
  surface?: SurfaceFile | undefined;
  salt?: SaltFile | undefined;
  nitrogen?: SoilNitrogenFile | undefined;
}

export const offsetsSchema: z.ZodType<number[]> = z
  .array(between(-15, 15, "Distance of a dripline from the tree row, m."))
  .min(1)
  .max(6)
  .describe("Driplines across the row: mirror pairs such as -0.5 and 0.5, and 0 for one on the row.");

const caught = (most: number, text: string) =>
  z
    .array(between(0, most, text))
    .min(4)
    .max(2000);

const catchesSchema: z.ZodType<CatchesFile> = z
  .strictObject({
    volumesMl: caught(100_000, "Water of one emitter, mL; the same time for all.").optional(),
    flowsLPerH: caught(60, "Measured flow of one emitter, L/h.").optional(),
  })
  .meta({ oneOf: [{ required: ["volumesMl"] }, { required: ["flowsLPerH"] }] });

export const linesSchema: z.ZodType<LinesFile> = z.strictObject({
  offsetsM: offsetsSchema,
  emitterSpacingM: positive(10, "Distance between emitters along a line, m."),
  emitterFlowLPerH: positive(60, "Flow of one emitter, L/h."),
  pluggedPerTree: orDefault(
    whole(0, 1000, "Emitters of a tree that are plugged; the others are open."),
    defaults.pluggedPerTree,
  ),
  lowQuarterUniformityFraction: orDefault(
    z.number().gt(0).max(1).describe("Mean flow of the lowest quarter of emitters over the mean flow."),
    defaults.lowQuarterUniformityFraction,
  ),
  catches: catchesSchema
    .optional()
    .describe(
      "A catch-can test over the whole line, 4 emitters or more: its low-quarter uniformity is worked out and takes the place of lowQuarterUniformityFraction.",
    ),
  drainOut: z
    .strictObject({
      innerDiameterMm: between(4, 40, "Bore of the driplines, mm."),
      drainHours: orDefault(between(0.1, 24, "Hours in which the full lines run empty."), defaults.drainHours),
      lowTreesFraction: orDefault(
        between(0.01, 0.5, "Share of the trees, at the low end, that receive what drains out."),
        defaults.lowTreesFraction,
      ),
    })
    .optional()
    .describe("Lines that run empty after every closing and fill again at every start. Left out: they stay full."),
});

const pullLimitKPa = positive(1500, "Tension beyond which the tree draws little, kPa.");
const zeroUptakeKPa = positive(5000, "Tension at which uptake ends, kPa.");
const airLimitFraction = z
  .number()
  .gt(0)
  .max(0.5)
  .describe("Air-filled porosity below which roots are airless, m3/m3.");
const airZeroFraction = between(0, 0.5, "Air-filled porosity at which airless uptake has fallen to nothing, m3/m3.");
const airReturnKPa = positive(100, "Tension at which air is back, kPa.");

const limitPeriodSchema: z.ZodType<LimitPeriodFile> = z.strictObject({
  name: named("Name of the period, for instance flowering."),
  from: monthDay("First day, MM-DD."),
  to: monthDay("Last day, MM-DD; it may lie in the next year."),
  pullLimitKPa: pullLimitKPa.optional(),
  zeroUptakeKPa: zeroUptakeKPa.optional(),
  airLimitFraction: airLimitFraction.optional(),
  airZeroFraction: airZeroFraction.optional(),
  airReturnKPa: airReturnKPa.optional(),
});

export const limitsSchema: z.ZodType<LimitsFile> = z.strictObject({
  pullLimitKPa: orDefault(pullLimitKPa, defaults.pullLimitKPa),
  pullLimitLowDemandKPa: positive(
    1500,
    "Pull limit on days of 1 mm of transpiration or less, kPa; linear to pullLimitKPa at 5 mm (Feddes et al. 1978). Left out: the same on every day.",
  ).optional(),
  zeroUptakeKPa: orDefault(zeroUptakeKPa, defaults.zeroUptakeKPa),
  airLimitFraction: orDefault(airLimitFraction, defaults.airLimitFraction),
  airZeroFraction: orDefault(airZeroFraction, defaults.airZeroFraction),
  airReturnKPa: orDefault(airReturnKPa, defaults.airReturnKPa),
  periods: z
    .array(limitPeriodSchema)
    .max(20)
    .optional()
    .describe("Weeks of the year with limits of their own, such as flowering."),
});

export const kcbSchema: z.ZodType<NonNullable<TreeFile["kcb"]>> = z
  .array(
    z.strictObject({
      date: isoDate("Date from which the value holds or between which it is linear."),
      kcb: positive(1.4, "Basal crop coefficient: transpiration over ET0, on the whole ground of the tree."),
    }),
  )
  .min(1)
  .max(400)
  .describe("Basal crop coefficient by date; linear between, constant before the first and after the last.");

/** Exactly one of the two ways to say how much the tree draws; `parseScenario` reports it, the JSON Schema shows it. */
const oneDemand = [{ required: ["kcb"] }, { required: ["crop"] }];

export const treeSchema: z.ZodType<TreeFile> = z
  .strictObject({
    name: named("Kind of tree, for instance avocado."),
    canopyDiameterM: positive(30, "Diameter of the canopy, m; at the start of the season where it grows."),
    kcb: kcbSchema.optional(),
    ...treeDemandFields,
    roots: rootsSchema.optional(),
    ball: ballSchema
      .optional()
      .describe("Nursery ball of a tree just planted, a medium of its own. Left out: the tree stands in the soil."),
    limits: limitsSchema.optional(),
  })
  .meta({ oneOf: oneDemand });

export const blockSchema: z.ZodType<BlockFile> = z.strictObject({
  treeSpacingM: between(0.2, 30, "Distance between trees along the row, m."),
  rowSpacingM: between(0.5, 30, "Distance between rows, m."),
  tree: treeSchema,
  lines: linesSchema,
  surface: surfaceSchema
    .optional()
    .describe(
      "Litter, mulch, leaves that hold rain, run-off, how the soil dries. Default: bare, all rain meets the soil.",
    ),
  salt: saltSchema
    .optional()
    .describe("Salt of the water and the soil, and how it holds the tree back. Left out: salt is not reckoned."),
  nitrogen: soilNitrogenSchema
    .optional()
    .describe("Nitrate that is there without the programme, and what the tree can take."),
});
