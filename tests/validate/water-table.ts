import type { StationRecord } from "./station-record.js";

/** Water content swings over at least this much, m3/m3, where a water table comes and goes; our choice, no source. */
const widestDrainedRange = 0.2;
/** Within this of its highest reading a probe counts as saturated, m3/m3. */
const nearHighest = 0.03;
/** Share of the days that no rain alone keeps a freely draining soil saturated; our choice, no source. */
const saturatedShare = 0.2;

/**
 * A note when the deepest probe tells of a water table: it swings widely, and stays near its highest reading for long.
 * A freely draining column cannot follow that.
 */
export function waterTableNotes(record: StationRecord): string[] {
  const depthCm = record.depthsCm[record.depthsCm.length - 1];
  const read = Array.from(record.theta[record.theta.length - 1])
    .filter((t) => !Number.isNaN(t))
    .sort((a, b) => a - b);
  const at = (share: number): number => read[Math.round(share * (read.length - 1))];
  const highest = read[read.length - 1];
  const full = read.filter((t) => t > highest - nearHighest).length / read.length;
  if (at(0.99) - at(0.01) < widestDrainedRange || full < saturatedShare) return [];
  return [
    `water table: at ${depthCm} cm the soil swings from ${at(0.01).toFixed(2)} to ${at(0.99).toFixed(2)} and is near its wettest on ` +
      `${(100 * full).toFixed(0)} % of the days; a freely draining column cannot follow that`,
  ];
}
