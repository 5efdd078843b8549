import { lineContentLPerTree } from "../lines/line-content.js";
import { dayNumber } from "../numeric/day-number.js";
import type { DefaultUsed } from "../water/result.js";
import { presetOf } from "./crop-defaults.js";
import type { DayAir } from "./day-air.js";
import { defaults } from "./defaults.js";
import { type Fault, fault } from "./faults.js";
import { catchFaults, filledUniformity } from "./parse-catches.js";
import { pick } from "./parse-default.js";
import { filledLimits } from "./parse-limits.js";
import { filledBall, filledRoots } from "./parse-roots.js";
import { filledSalt, filledSoilNitrogen, saltyWaterNotes } from "./parse-solutes.js";
import { filledSurface } from "./parse-surface.js";
import { filledDemand } from "./parse-tree.js";
import type { Block, Lines, Season, SiteWeather } from "./scenario.js";
import type { BlockFile, LinesFile, TreeFile } from "./schema-block.js";
import { treeDays } from "./tree-days.js";

/** Nearer than this two lines, or a line and mid-alley, leave no room for lanes between them, m. Our choice. */
const apartM = 0.04;
const samePlaceM = 1e-6;

/** What the shape of the lines cannot say; spacings are left out where the file's own are not readable. */
export function lineFaults(
  lines: LinesFile,
  path: string,
  spacing: { readonly treeM: number | undefined; readonly rowM: number | undefined },
): Fault[] {
  const { offsetsM, emitterSpacingM, pluggedPerTree } = lines;
  const near = (a: number, b: number): boolean => Math.abs(a - b) < samePlaceM;
  const found: Fault[] = [];
  offsetsM.forEach((offset, i) => {
    const at = `${path}.offsetsM[${i}]`;
    const twins = offsetsM.filter((other) => near(other, offset)).length;
    const mirrored = offsetsM.filter((other) => near(other, -offset)).length;
    if (mirrored < twins) found.push(fault("not-mirrored", at, offset, { mirror: -offset }));
    const halfM = spacing.rowM === undefined ? Number.POSITIVE_INFINITY : spacing.rowM / 2;
    if (Math.abs(offset) > halfM - apartM)
      found.push(fault("line-beyond-half-row", at, offset, { half: halfM, apart: apartM }));
    const crowding = offsetsM.find(
      (other) => other * offset >= 0 && !near(other, offset) && Math.abs(other - offset) < apartM,
    );
    if (crowding !== undefined) found.push(fault("lines-too-close", at, offset, { apart: apartM, other: crowding }));
  });
  if (spacing.treeM !== undefined && emitterSpacingM > spacing.treeM) {
    found.push(fault("emitters-too-far-apart", `${path}.emitterSpacingM`, emitterSpacingM, { spacing: spacing.treeM }));
  }
  if (spacing.treeM !== undefined && pluggedPerTree !== undefined) {
    const emitters = (offsetsM.length * spacing.treeM) / emitterSpacingM;
    if (pluggedPerTree > emitters - 1) {
      found.push(fault("no-open-emitter", `${path}.pluggedPerTree`, pluggedPerTree, { emitters }));
    }
  }
  return [...found, ...catchFaults(lines, path)];
}

/** Dates that do not rise. */
export function kcbFaults(points: NonNullable<TreeFile["kcb"]>, path: string): Fault[] {
  return points.flatMap((point, i) => {
    if (i === 0 || dayNumber(point.date) > dayNumber(points[i - 1].date)) return [];
    return [fault("dates-not-rising", `${path}[${i}].date`, point.date, { before: points[i - 1].date })];
  });
}

function filledDrainOut(
  { lines, treeSpacingM }: BlockFile,
  path: string,
  used: DefaultUsed[],
): Pick<Lines, "drainOut"> {
  const { drainOut, offsetsM } = lines;
  if (drainOut === undefined) return {};
  const { innerDiameterMm } = drainOut;
  return {
    drainOut: {
      contentLPerTree: lineContentLPerTree({ innerDiameterMm, lines: offsetsM.length, treeSpacingM }),
      drainHours: pick(used, `${path}.drainHours`, drainOut.drainHours, defaults.drainHours),
      lowTreesFraction: pick(used, `${path}.lowTreesFraction`, drainOut.lowTreesFraction, defaults.lowTreesFraction),
    },
  };
}

/** The season that a block lives through. */
export interface BlockSeason {
  readonly season: Season;
  readonly weather: SiteWeather;
  readonly air: DayAir;
}

/** A checked block with its defaults filled in, and what depends on the weather worked out by day. */
export function filledBlock(
  file: BlockFile,
  path: string,
  { season, weather, air }: BlockSeason,
  used: DefaultUsed[],
  notes: string[],
): Block {
  const { tree, lines, surface, salt, nitrogen } = file;
  const preset = presetOf(tree.crop?.preset);
  const demand = filledDemand(tree, `${path}.tree`, weather.latitudeDeg, used);
  const spaced = { ...file, canopyDiameterM: tree.canopyDiameterM };
  const worked = demand === undefined ? undefined : treeDays(demand, spaced, season, air, weather);
  if (worked !== undefined) {
    used.push(...worked.moved.map((moved) => ({ path: `${path}.tree.climateAdjustment`, ...moved })));
    notes.push(...worked.notes, ...(preset?.cautions ?? []).map((text) => `${tree.name}: ${text}`));
  }
  if (salt !== undefined) notes.push(...saltyWaterNotes(salt));
  return {
    treeSpacingM: file.treeSpacingM,
    rowSpacingM: file.rowSpacingM,
    tree: {
      name: tree.name,
      canopyDiameterM: tree.canopyDiameterM,
      kcb: tree.kcb ?? [],
      ...(worked === undefined ? {} : { days: worked.days }),
      roots: filledRoots(tree.roots ?? {}, { ball: tree.ball, preset }, `${path}.tree.roots`, used),
      ...(tree.ball === undefined ? {} : { ball: filledBall(tree.ball, `${path}.tree.ball`, used) }),
      limits: filledLimits(tree.limits ?? {}, `${path}.tree.limits`, preset, used),
    },
    lines: {
      offsetsM: lines.offsetsM,
      emitterSpacingM: lines.emitterSpacingM,
      emitterFlowLPerH: lines.emitterFlowLPerH,
      pluggedPerTree: pick(used, `${path}.lines.pluggedPerTree`, lines.pluggedPerTree, defaults.pluggedPerTree),
      lowQuarterUniformityFraction: filledUniformity(lines, `${path}.lines`, used, notes),
      ...filledDrainOut(file, `${path}.lines.drainOut`, used),
    },
    ...(surface === undefined ? {} : { surface: filledSurface(surface, `${path}.surface`, weather.rainMm, used) }),
    ...(salt === undefined ? {} : { salt: filledSalt(salt, `${path}.salt`, used) }),
    ...(nitrogen === undefined ? {} : { nitrogen: filledSoilNitrogen(nitrogen, `${path}.nitrogen`, used) }),
  };
}
