import type { ColumnPlan } from "./column-plan.js";
import { type NumberStyle, readNumber } from "./read-number.js";
import type { RowCursor } from "./row-cursor.js";

/** A long table: several rows of one time, each of another depth or probe. */
export interface LongTable {
  /** Which series each row belongs to. */
  readonly keys: readonly string[];
  readonly depthsCm: ReadonlyMap<string, number | undefined>;
  /** The probe of each row; empty where the file names none. */
  readonly probes: readonly string[];
}

/**
 * Whether rows are told apart by a depth or probe column, and how. A probe that stands at a depth with others is its own series; one that
 * takes over from another at the same depth is the same series with another sensor.
 */
export function longTable(
  plans: readonly ColumnPlan[],
  rows: RowCursor,
  places: readonly number[],
  minutes: Float64Array,
  style: NumberStyle,
): LongTable | undefined {
  const depth = plans.find(({ role }) => role.kind === "depth");
  const probe = plans.find(({ role }) => role.kind === "probe");
  if (depth === undefined && probe === undefined) return undefined;
  const read = (plan: ColumnPlan | undefined): string[] =>
    places.map((place) => {
      rows.open(place);
      return plan === undefined ? "" : rows.cell(plan.index).trim();
    });
  const depths = read(depth);
  const probes = probe === undefined ? [] : read(probe);
  const crowded = depth === undefined || (probe !== undefined && sharesDepth(minutes, depths, probes));
  const keys = depths.map((text, i) => (crowded && probe !== undefined ? `${text}|${probes[i]}` : text));
  const factor = depth !== undefined && /\bm\b/i.test(depth.header.replace(/[_()]/g, " ")) ? 100 : 1;
  const depthsCm = new Map<string, number | undefined>();
  for (let i = 0; i < keys.length; i++) {
    if (depthsCm.has(keys[i])) continue;
    const value = readNumber(depths[i].replace(/\s*cm$/i, ""), style) * factor;
    depthsCm.set(keys[i], Number.isNaN(value) || value < 0 ? undefined : value);
  }
  return depthsCm.size > 200 ? undefined : { keys, depthsCm, probes };
}

function sharesDepth(minutes: Float64Array, depths: readonly string[], probes: readonly string[]): boolean {
  const seen = new Map<string, string>();
  for (let i = 0; i < depths.length; i++) {
    const key = `${minutes[i]}|${depths[i]}`;
    const probe = seen.get(key);
    if (probe === undefined) seen.set(key, probes[i]);
    else if (probe !== probes[i]) return true;
  }
  return false;
}
