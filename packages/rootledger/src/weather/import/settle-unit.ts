import { keptUnits } from "./plan-columns.js";
import type { QuantityName } from "./quantity.js";
import { quantities } from "./quantity.js";
import type { RawColumn } from "./read-values.js";
import type { Assumption, ColumnReport } from "./station-report.js";
import type { Stop } from "./stop.js";
import { type Unit, unitOf } from "./unit.js";
import { unitQuestion } from "./unit-question.js";

/** What is known of the file as a whole when a column's unit is settled. */
export interface FileFacts {
  readonly stepMinutes: number;
  /** Another column is in Fahrenheit, miles per hour or inches. */
  readonly usUnits: boolean;
  readonly years: number;
}

export interface SettledUnit {
  readonly unit: Unit;
  readonly unitFrom: ColumnReport["unitFrom"];
  readonly assumptions: readonly Assumption[];
}

/** Years of rain above this are no rain that trees are watered beside; own choice after the wettest orchards. */
const mostRainMmPerYear = 6000;

/** Settles the unit of a column, or asks for it; undefined where the column is better left out. */
export function settleUnit(quantity: QuantityName, raw: RawColumn, facts: FileFacts): SettledUnit | Stop | undefined {
  const { plan } = raw;
  const { dimension } = quantities[quantity];
  const range = rangeOf(raw.values);
  const known = plan.unit ?? raw.cellUnit;
  const seconds = (unit: Unit): number => (unit.perSecond ? facts.stepMinutes * 60 : 1);
  const question = (why: string): Stop =>
    unitQuestion(quantity, plan.header, why, range.highest, seconds, [
      `values from ${range.lowest} to ${range.highest}`,
    ]);
  if (known !== undefined) {
    const unitFrom = plan.unit === undefined ? "cells" : plan.unitFrom;
    const why = canonical(raw) ? undefined : doubt(quantity, raw.values, known, facts, seconds(known), 0.02);
    return why === undefined || unitFrom === "answer" ? { unit: known, unitFrom, assumptions: [] } : question(why);
  }
  if (range.count === 0) return assumed(quantity, dimensionDefault(quantity), "the column is empty");
  const mixed = facts.usUnits && ["temperature", "depth", "speed"].includes(dimension);
  if (mixed) return question("Other columns of the file are in US units.");
  const guess = plausible(quantity, plan.header, range, facts);
  if (guess === undefined) return undefined;
  if (typeof guess === "string") return question(guess);
  const why = doubt(quantity, raw.values, guess, facts, seconds(guess), 0);
  return why === undefined
    ? assumed(quantity, guess, `no unit in the file; values from ${range.lowest} to ${range.highest}`)
    : question(why);
}

const canonical = (raw: RawColumn): boolean => raw.plan.role.kind === "quantity" && raw.plan.role.canonical;

function assumed(quantity: QuantityName, unit: Unit, because: string): SettledUnit {
  return { unit, unitFrom: "assumed", assumptions: [{ key: "", taken: `${quantity} in ${unit.id}`, because }] };
}

function dimensionDefault(quantity: QuantityName): Unit {
  const { dimension } = quantities[quantity];
  const unit = unitOf(keptUnits[dimension], dimension);
  if (unit === undefined) throw new RangeError(`every dimension requires a kept unit: got ${dimension}`);
  return unit;
}

interface Range {
  readonly lowest: number;
  readonly highest: number;
  readonly count: number;
}

function rangeOf(values: Float64Array): Range {
  let lowest = Number.NaN;
  let highest = Number.NaN;
  let count = 0;
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    if (!(value >= lowest)) lowest = value;
    if (!(value <= highest)) highest = value;
    count++;
  }
  return { lowest, highest, count };
}

/** The unit that the size of the values leaves, words why it must be asked, or undefined to leave the column out. */
function plausible(
  quantity: QuantityName,
  header: string,
  { lowest, highest }: Range,
  { stepMinutes }: FileFacts,
): Unit | string | undefined {
  const { dimension } = quantities[quantity];
  const of = (id: string): Unit => unitOf(id, dimension) ?? dimensionDefault(quantity);
  switch (quantity) {
    case "solarMJPerM2":
      if (stepMinutes < 1440) return "The file does not say it, and at this step the size does not tell.";
      return highest <= 50 ? of("MJ/m2") : "No day has more than 50 MJ/m2.";
    case "soilTensionKPa":
    case "vapourPressureKPa":
    case "irrigationM3":
      return "The file does not say it, and the size does not tell.";
    case "pressureKPa":
      return lowest >= 400 && highest <= 1090 ? of("hPa") : lowest >= 40 && highest <= 109 ? of("kPa") : undefined;
    case "soilMoistureM3PerM3":
      return highest > 1 ? of("percent") : of("fraction");
    case "rainMm":
      if (/^prcp$/i.test(header.trim())) return "Files with this name come in mm, in tenths of mm and in inches.";
      return dimensionDefault(quantity);
    default:
      if (dimension === "humidity" && highest > 0 && highest <= 1)
        return "No value is above 1: percent, or a fraction?";
      return dimensionDefault(quantity);
  }
}

/**
 * Why a unit cannot be right; undefined where it can: a day's maximum above 55 C, a day of more than 500 mm and so on. Up to `outliers` of the
 * values may be impossible without doubt on the unit: they are asked about one by one.
 */
function doubt(
  quantity: QuantityName,
  values: Float64Array,
  unit: Unit,
  facts: FileFacts,
  factor: number,
  outliers: number,
): string | undefined {
  const { lowest, highest, dimension } = quantities[quantity];
  if (dimension === "moisture" || dimension === "pressure" || dimension === "angle") return undefined;
  let beyond = 0;
  let count = 0;
  let sum = 0;
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    const kept = unit.toKept(value) * factor;
    count++;
    sum += kept;
    if (kept > highest || (kept < lowest && dimension === "temperature")) beyond++;
  }
  if (quantity === "rainMm" && facts.years >= 1 && sum / facts.years > mostRainMmPerYear) {
    return `Read as ${unit.id}, it rains ${Math.round(sum / facts.years)} mm a year.`;
  }
  const many = beyond > outliers * count && (outliers === 0 || beyond > 2);
  return many ? `Read as ${unit.id}, ${beyond} of ${count} values are above ${highest} or impossible.` : undefined;
}
