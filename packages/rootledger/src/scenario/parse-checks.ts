import { z } from "zod";
import { presetOf } from "./crop-defaults.js";
import { type Fault, fault } from "./faults.js";
import { kcbFaults, lineFaults } from "./parse-block.js";
import { readPart, valueAt } from "./parse-issues.js";
import { limitFaults } from "./parse-limits.js";
import { programmeFaults, type RunPlace } from "./parse-programme.js";
import { type NeedsRew, rewFaults } from "./parse-rew.js";
import { ballFaults, rootDepthOf, rootsFaults } from "./parse-roots.js";
import { soilFaults } from "./parse-soil.js";
import { saltFaults } from "./parse-solutes.js";
import { surfaceFaults } from "./parse-surface.js";
import { kcbSchema, type LinesFile, limitsSchema, linesSchema, treeSchema } from "./schema-block.js";
import { seasonSchema } from "./schema-file.js";
import { type ProgrammeFile, programmeSchema } from "./schema-programme.js";
import { ballSchema, rootsSchema } from "./schema-roots.js";
import { soilSchema } from "./schema-soil.js";
import { saltSchema } from "./schema-solutes.js";
import { surfaceSchema } from "./schema-surface.js";
import { demandFaults } from "./tree-faults.js";

/**
 * Faults of the block beyond its shape. Each part is checked if its own shape is right, whatever is wrong elsewhere, so that
 * one reading of the file reports everything.
 */
export function blockFaults(file: unknown): Fault[] {
  const found: Fault[] = [];
  const lines = readPart(linesSchema, file, ["block", "lines"]);
  if (lines) found.push(...lineFaults(lines, "block.lines", spacingOf(file)));
  const kcb = readPart(kcbSchema, file, ["block", "tree", "kcb"]);
  if (kcb) found.push(...kcbFaults(kcb, "block.tree.kcb"));
  const limits = readPart(limitsSchema.optional(), file, ["block", "tree", "limits"]);
  if (limits) found.push(...limitFaults(limits, "block.tree.limits", presetIn(file)));
  const tree = readPart(treeSchema, file, ["block", "tree"]);
  const season = readPart(seasonSchema, file, ["season"]);
  const latitudeDeg = numberAt(file, ["weather", "latitudeDeg"]);
  if (tree) found.push(...demandFaults(tree, "block.tree", { season, latitudeDeg }));
  const ball = readPart(ballSchema.optional(), file, ["block", "tree", "ball"]);
  const roots = readPart(rootsSchema.optional(), file, ["block", "tree", "roots"]);
  if (roots) found.push(...rootsFaults(roots, { ball, preset: presetIn(file) }, "block.tree.roots"));
  if (ball) found.push(...ballFaults(ball, "block.tree.ball", spacingOf(file)));
  const surface = readPart(surfaceSchema, file, ["block", "surface"]);
  const rainIntensityMmPerH = numberAt(file, ["weather", "rainIntensityMmPerH"]);
  const coefficient = valueAt(file, ["block", "tree", "crop", "coefficient"]);
  if (surface) found.push(...surfaceFaults(surface, "block.surface", { rainIntensityMmPerH, coefficient }));
  const salt = readPart(saltSchema.optional(), file, ["block", "salt"]);
  if (salt) found.push(...saltFaults(salt, "block.salt"));
  return found;
}

/** Faults of the soil at `path` beyond its shape. */
export function soilFaultsAt(file: unknown, path: readonly (string | number)[], name: string): Fault[] {
  const soil = readPart(soilSchema, file, path);
  const depthPath = ["block", "tree", "roots", "depthCm"];
  const given = valueAt(file, depthPath);
  const ball = readPart(ballSchema, file, ["block", "tree", "ball"]);
  const depthCm = given === undefined ? rootDepthOf({ ball, preset: presetIn(file) }).value : numberAt(file, depthPath);
  if (soil === undefined) return [];
  const found = soilFaults(soil, name, depthCm);
  const evaporableCm = numberAt(file, ["block", "surface", "evaporableDepthCm"]);
  return found.length > 0 ? found : rewFaults(soil, name, needsRew(file), evaporableCm);
}

const presetIn = (file: unknown) => presetOf(valueAt(file, ["block", "tree", "crop", "preset"]));

/** Whether the file asks for evaporation that needs REW. */
export const needsRew = (file: unknown): NeedsRew =>
  valueAt(file, ["block", "surface", "evaporation"]) === "two-stage" ? "with-rew" : "without-rew";

/** Faults of the programme at `path` beyond its shape. */
export function programmeFaultsAt(file: unknown, path: readonly (string | number)[], name: string): Fault[] {
  const programme = readPart(programmeSchema, file, path);
  if (programme === undefined) return [];
  const own = ownLines(file, programme);
  const ofLines = own === undefined || programme.lines === undefined ? [] : ownLineFaults(file, own, `${name}.lines`);
  return [...ofLines, ...programmeFaults(programme, name, runPlace(file, own))];
}

/** What is wrong with a programme's own lines; the emitters' spacing is the block's and found there. */
function ownLineFaults(file: unknown, own: LinesFile, path: string): Fault[] {
  return lineFaults(own, path, spacingOf(file))
    .filter(({ code }) => code !== "emitters-too-far-apart")
    .map((found) => (found.code === "no-open-emitter" ? { ...found, path } : found));
}

/** The block's lines as a programme finds them; catches are the block's and judged there. */
function ownLines(file: unknown, { lines: own }: ProgrammeFile): LinesFile | undefined {
  const lines = readPart(linesSchema, file, ["block", "lines"]);
  return lines && { ...lines, catches: undefined, ...own };
}

function runPlace(file: unknown, lines: LinesFile | undefined): RunPlace {
  const treeSpacingM = numberAt(file, ["block", "treeSpacingM"]);
  const rowSpacingM = numberAt(file, ["block", "rowSpacingM"]);
  const innermostM = lines === undefined ? undefined : Math.min(...lines.offsetsM.map(Math.abs));
  const whole = lines && treeSpacingM !== undefined && treeSpacingM > 0;
  return {
    startDate: readPart(z.iso.date(), file, ["season", "startDate"]),
    seasonDays: readPart(z.int().min(1).max(20000), file, ["season", "days"]),
    emittersPerTree: whole
      ? (lines.offsetsM.length * treeSpacingM) / lines.emitterSpacingM - (lines.pluggedPerTree ?? 0)
      : undefined,
    emitterFlowLPerH: lines?.emitterFlowLPerH,
    groundM2: treeSpacingM === undefined || rowSpacingM === undefined ? undefined : treeSpacingM * rowSpacingM,
    soilDepthCm: shallowestCm(file),
    lineToAlleyCm:
      rowSpacingM === undefined || innermostM === undefined ? undefined : (rowSpacingM / 2 - innermostM) * 100,
  };
}

const spacingOf = (file: unknown) => ({
  treeM: numberAt(file, ["block", "treeSpacingM"]),
  rowM: numberAt(file, ["block", "rowSpacingM"]),
});

/** Depth of the shallowest soil of a file. */
function shallowestCm(file: unknown): number | undefined {
  const soils = [["soil"], ...[0, 1, 2, 3].map((i) => ["soils", i])];
  const depths = soils.flatMap((path) => readPart(soilSchema, file, path)?.horizons.at(-1)?.toCm ?? []);
  return depths.length === 0 ? undefined : Math.min(...depths);
}

const numberAt = (file: unknown, path: readonly string[]): number | undefined => readPart(z.number(), file, path);

/** Soils or programmes of one comparison that share a name. */
export function nameFaults(file: unknown, list: "soils" | "programmes"): Fault[] {
  const names = readPart(z.array(z.looseObject({ name: z.string() })), file, [list]) ?? [];
  return names.flatMap(({ name }, i) => {
    const first = names.findIndex((other) => other.name === name);
    return first < i ? [fault("same-name", `${list}[${i}].name`, name, { other: `${list}[${first}]` })] : [];
  });
}
