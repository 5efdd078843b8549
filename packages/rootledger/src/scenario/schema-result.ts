import { z } from "zod";

/** Numbers of a typed array; what is not finite is null in JSON. */
const numbers = z.array(z.number().nullable());
const tree = z.enum(["under-fed", "mean", "over-fed"]);
const text = z.string();
const count = z.int().min(0);
const maybe = z.number().nullable();

const table = z.strictObject({
  rowLength: z.enum(["hour", "day"]),
  rows: count,
  trees: count,
  columns: z.array(
    z.strictObject({
      name: text,
      unit: text,
      kind: z.enum(["state", "flux", "sum"]).describe("At the end of the row, during it, or since the start."),
      values: numbers.describe("values[row * trees + tree]"),
    }),
  ),
});

const byTree = <K extends string>(...names: readonly K[]) =>
  Object.fromEntries(names.map((name) => [name, numbers.describe("One entry for each tree.")])) as Record<
    K,
    typeof numbers
  >;

const soluteLedger = z.strictObject(
  byTree(
    ...["startG", "withWaterG", "byHandG", "takenUpG", "bottomG", "runoffG", "endG", "onGroundG", "residualG"],
    "residualFraction",
  ),
);

const defaultsUsed = z
  .array(z.strictObject({ path: text, value: text, source: text }))
  .describe("Every default that the file left to us, with its source.");

const inputsKey = text.optional().describe("Names what went in, whatever the order of its fields.");

/** The fields of one run. */
const resultFields = {
  version: text.describe("Of the library."),
  scenarioName: text,
  soilName: text,
  programmeName: text,
  engine: z.enum(["bucket", "richards", "spill"]),
  status: z.discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("finished") }),
    z.strictObject({ kind: z.literal("stopped"), hour: z.number(), by: text }),
    z.strictObject({ kind: z.literal("failed"), hour: z.number(), message: text }),
  ]),
  startDate: z.iso.date(),
  trees: z.array(tree),
  section: z.strictObject({
    geometry: z.enum(["strip", "ring"]),
    geometryReason: text,
    rootsReason: text,
    layers: count,
    lanes: count,
    ...byTree("layerEdgesCm", "laneEdgesCm", "lineAtCm", "volumeCm3", "rootShare", "wetByLane"),
    ...byTree("thetaSaturated", "thetaAtAirReturn", "thetaAtPullLimit", "thetaResidual"),
  }),
  window: z.strictObject({
    airReturnKPa: z.number(),
    pullLimitKPa: z.number(),
    airLimitFraction: z.number(),
    waterAtAirReturnMm: z.number(),
    waterAtPullLimitMm: z.number(),
    litresPerTree: z.number(),
  }),
  settling: z.strictObject({ kind: z.enum(["same-state", "settled"]), cycles: count, changeFraction: maybe }),
  subSteps: count,
  valveH: numbers.describe("Hours since the season's start: on, off, on, off ..."),
  watering: z
    .strictObject({
      askedRuns: count,
      givenRuns: count,
      askedMinutes: z.number(),
      givenMinutes: z.number(),
      cuts: z.array(z.strictObject({ day: count, reason: text, minutes: z.number() })),
    })
    .optional(),
  days: table,
  hours: table,
  cells: z.strictObject({ fromHour: count, hours: count, theta: numbers }).optional(),
  airlessH: numbers,
  thirstyH: numbers,
  rootHours: z.strictObject({ parts: z.array(text), partOfDay: z.array(count), values: numbers }),
  measures: z.array(z.strictObject({ id: text, unit: text, values: numbers.describe("One entry for each tree.") })),
  ledger: z.strictObject(
    byTree(
      ...["startCm3", "emitterCm3", "rainCm3", "heldByCanopyCm3", "heldByLayerCm3", "transpirationCm3"],
      ...["evaporationCm3", "runoffCm3", "bottomCm3", "ownCm3", "endCm3", "residualCm3", "residualFraction"],
    ),
  ),
  solutes: z
    .strictObject({
      days: table,
      salt: soluteLedger.optional(),
      nitrogen: soluteLedger.optional(),
      cellEceDsPerM: numbers.optional(),
      cellNitrateMgPerL: numbers.optional(),
    })
    .optional(),
  notes: z.array(text),
};

const difference = {
  measureId: text,
  unit: text,
  soil: text,
  tree,
  from: text,
  to: text,
  floor: maybe.describe("Size below which nothing is claimed."),
  floorBasis: text,
  floorReason: text,
  verdict: z.enum(["rises", "falls", "no clear difference"]),
};
const badge = z.enum(["same-water", "same-weather", "same-start", "settled", "one-question"]);
const band = { low: maybe, median: maybe, high: maybe };

const comparisonFields = {
  version: text,
  name: text,
  remark: text,
  arms: z.array(z.strictObject({ soil: text, programme: text, result: z.strictObject(resultFields) })),
  badges: z.array(
    z.strictObject({ id: badge, holds: z.boolean(), detail: text, figures: z.record(text, z.number()).optional() }),
  ),
  changes: z.array(z.strictObject({ from: text, to: text, questions: z.array(text) })),
  differences: z.array(
    z.strictObject({ ...difference, fromValue: z.number(), toValue: z.number(), difference: z.number() }),
  ),
  defaultsUsed,
};

const ensembleFields = {
  version: text,
  name: text,
  status: z.enum(["finished", "stopped"]),
  members: count,
  finished: count,
  failed: count,
  failures: z.array(z.strictObject({ member: count, reason: text, draw: z.record(text, z.number()) })),
  draws: z.discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("own"), ids: z.array(text), values: numbers }),
    z.strictObject({
      kind: z.literal("priors"),
      seed: z.union([text, z.number()]),
      priors: z.strictObject({
        unknowns: z.array(
          z.strictObject({ id: text, unit: text, spread: z.looseObject({ kind: text }), source: text }),
        ),
        correlations: z.array(z.strictObject({ a: text, b: text, r: z.number() })),
      }),
    }),
  ]),
  bands: z.array(z.strictObject({ soil: text, programme: text, tree, measureId: text, unit: text, ...band })),
  differences: z.array(z.strictObject({ ...difference, ...band, risesShare: maybe, fallsShare: maybe })),
  badges: z.array(z.strictObject({ id: badge, holds: z.boolean(), heldIn: count })),
};

/** JSON Schema (draft 2020-12) of a run's result as JSON, with what the command line adds. @example resultJsonSchema().type // "object" */
export const resultJsonSchema = (): z.core.JSONSchema.BaseSchema =>
  z.toJSONSchema(
    z.strictObject({
      ...resultFields,
      inputsKey,
      defaultsUsed: defaultsUsed.optional(),
      weatherNotes: z.array(text).optional(),
    }),
  );

/** JSON Schema (draft 2020-12) of a comparison's result as JSON, with what the command line adds. @example comparisonResultJsonSchema().type // "object" */
export const comparisonResultJsonSchema = (): z.core.JSONSchema.BaseSchema =>
  z.toJSONSchema(
    z.strictObject({
      ...comparisonFields,
      inputsKey,
      notes: z.array(text).optional(),
      ensemble: z.strictObject(ensembleFields).optional(),
      beside: z.array(z.looseObject({ id: text })).optional(),
    }),
  );

/** JSON Schema (draft 2020-12) of an ensemble's result as JSON, with what the command line adds. @example ensembleResultJsonSchema().type // "object" */
export const ensembleResultJsonSchema = (): z.core.JSONSchema.BaseSchema =>
  z.toJSONSchema(
    z.strictObject({
      ...ensembleFields,
      inputsKey,
      defaultsUsed: defaultsUsed.optional(),
      notes: z.array(text).optional(),
    }),
  );
