import { z } from "zod";
import { defaults } from "./defaults.js";
import { between, isoDate, openFraction, orDefault } from "./schema-fields.js";
import { type MaterialFile, materialFields, materialWords } from "./schema-material.js";

export interface RootsFile {
  depthCm?: number | undefined;
  topShare?: number | undefined;
  lateral?:
    | { kind: "wetted-lanes" }
    | { kind: "along-lines"; halfWidthCm?: number | undefined }
    | { kind: "disc"; radiusCm: number }
    | undefined;
  compensationOnset?: number | undefined;
  litter?: { thicknessCm: number; share: number } | undefined;
  growth?: RootPointFile[] | undefined;
}

export interface RootPointFile {
  date: string;
  depthCm: number;
  radiusCm?: number | undefined;
}

export interface BallFile extends MaterialFile {
  diameterCm: number;
  depthCm: number;
  emitterDistanceCm: number;
}

const lateralSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("wetted-lanes") }),
  z.strictObject({
    kind: z.literal("along-lines"),
    halfWidthCm: orDefault(
      between(5, 500, "Roots are even within this distance of any line, cm."),
      defaults.lateralHalfWidthCm,
    ),
  }),
  z.strictObject({
    kind: z.literal("disc"),
    radiusCm: between(5, 1500, "Roots are even over a disc of this radius round the trunk, cm."),
  }),
]);

const depthCm = (what: string): z.ZodType<number> => between(5, 300, what);

export const rootsSchema: z.ZodType<RootsFile> = z.strictObject({
  depthCm: orDefault(depthCm("Rooted depth, cm; that of the ball, where there is one."), defaults.rootDepthCm),
  topShare: orDefault(openFraction("Share of all roots in the top 20 cm."), defaults.topShare),
  lateral: lateralSchema
    .optional()
    .describe(
      "How the roots spread sideways. Default: wetted-lanes, as far from the lines as layout, emitter and soil of the top horizon keep the ground wet; the ball's disc, where there is one.",
    ),
  compensationOnset: orDefault(
    between(0.05, 1, "Stress ratio below which well-watered roots stop making up for thirsty ones; 1: never."),
    defaults.compensationOnset,
  ),
  litter: z
    .strictObject({
      thicknessCm: between(1, 30, "Depth of the leaf litter on top of the profile, cm; give it a horizon of its own."),
      share: openFraction("Share of all roots that live in the litter; topShare then counts from below it."),
    })
    .optional()
    .describe("Roots in the leaf litter. Left out: none."),
  growth: z
    .array(
      z.strictObject({
        date: isoDate("Date at which the roots reach so far."),
        depthCm: depthCm("Rooted depth then, cm, at most that of the roots."),
        radiusCm: between(5, 1500, "Radius of the disc then, cm, for roots of a disc.").optional(),
      }),
    )
    .min(1)
    .max(100)
    .optional()
    .describe("Roots that grow, linear between the dates. Left out: they do not."),
});

export const ballSchema: z.ZodType<BallFile> = z
  .strictObject({
    diameterCm: between(8, 200, "Diameter of the nursery ball, cm."),
    depthCm: depthCm("Depth of the ball, cm."),
    emitterDistanceCm: z
      .number()
      .min(0)
      .max(500)
      .describe("Distance of the open emitters from the trunk, cm; they count as evenly round it."),
    ...materialFields,
  })
  .meta({ oneOf: materialWords.map((word) => ({ required: [word] })) });
