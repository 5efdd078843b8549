import { dayNumber } from "../numeric/day-number.js";
import { presetStages } from "../tree/crop-preset.js";
import { isMonthDay } from "../tree/month-day.js";
import { stageSpans } from "../tree/stages.js";
import { cropDefaults, presetOf } from "./crop-defaults.js";
import type { DayAir } from "./day-air.js";
import { type Fault, fault } from "./faults.js";
import { phenologyOf, stageOf } from "./parse-tree.js";
import type { Season } from "./scenario.js";
import type { CropFile, ModifiersFile, TreeDemandFile } from "./schema-crop.js";

/** What the tree's demand is checked against; left out where the file's own is not readable. */
export interface DemandPlace {
  readonly season: Season | undefined;
  readonly latitudeDeg: number | undefined;
}

/** What the shape of the tree's demand cannot say. */
export function demandFaults(file: TreeDemandFile & { kcb?: unknown }, path: string, place: DemandPlace): Fault[] {
  const { crop, growth, modifiers, climateAdjustment } = file;
  const found: Fault[] = [];
  if ((file.kcb === undefined) === (crop === undefined)) {
    found.push(fault("exactly-one-of", path, file, { options: "kcb, crop" }));
  }
  const preset = presetOf(crop?.preset);
  if (crop !== undefined) found.push(...cropFaults(crop, `${path}.crop`, place));
  if (climateAdjustment === "full" && preset === undefined) {
    const terms = { others: "crop.preset", given: "coefficients of the file's own" };
    found.push(fault("only-beside", `${path}.climateAdjustment`, climateAdjustment, terms));
  }
  if (growth !== undefined && growth.canopy === undefined && preset === undefined) {
    found.push(fault("missing", `${path}.growth.canopy`, undefined, { expected: "canopy by age, or a crop.preset" }));
  }
  growth?.canopy?.forEach(({ ageYears }, i, canopy) => {
    const before = canopy[i - 1];
    if (before === undefined || ageYears > before.ageYears) return;
    const at = `${path}.growth.canopy[${i}].ageYears`;
    found.push(fault("not-above", at, ageYears, { other: "the age before it", limit: before.ageYears }));
  });
  if (modifiers !== undefined) found.push(...modifierFaults(modifiers, `${path}.modifiers`, crop));
  return found;
}

/** What the shape of a crop cannot say. */
export function cropFaults(crop: CropFile, path: string, { season, latitudeDeg }: DemandPlace): Fault[] {
  const { preset: name, stages, phenology } = crop;
  if ((name === undefined) === (stages === undefined)) {
    return [fault("exactly-one-of", path, crop, { options: "preset, stages" })];
  }
  const preset = presetOf(name);
  const found: Fault[] = [];
  for (const [event, day] of Object.entries(phenology ?? {})) {
    const at = `${path}.phenology.${event}`;
    if (!isDay(day)) found.push(fault("not-a-day", at, day));
    if (preset !== undefined && !Object.hasOwn(preset.phenologyNorth, event)) {
      found.push(fault("not-one-of", at, event, { options: Object.keys(preset.phenologyNorth).join(", ") }));
    }
  }
  const days = phenologyOf(crop, latitudeDeg ?? 0);
  const placed = preset === undefined ? (stages ?? []).map(stageOf) : presetStages(preset, "kcb");
  placed.forEach(({ starts }, i) => {
    const at = `${path}.stages[${i}].starts`;
    if ("event" in starts && !Object.hasOwn(days, starts.event)) {
      found.push(fault("no-day-of-event", at, starts.event, { known: Object.keys(days).join(", ") || "none" }));
    }
    const text = "date" in starts ? starts.date : "monthDay" in starts ? starts.monthDay : undefined;
    if (text !== undefined && !isDay(text)) found.push(fault("not-a-day", at, text));
  });
  if (found.length > 0 || season === undefined) return found;
  return placeFaults(placed, days, `${path}.${preset === undefined ? "stages" : "phenology"}`, season);
}

/** Stages that cannot follow one another, or leave the first day without one. */
function placeFaults(
  stages: Parameters<typeof stageSpans>[2],
  phenology: Parameters<typeof stageSpans>[3],
  path: string,
  season: Season,
): Fault[] {
  try {
    const [first] = stageSpans(season.startDate, season.days, stages, phenology);
    if (first !== undefined && first.fromDay <= dayNumber(season.startDate)) return [];
    return [fault("no-stage-on-first-day", path, stages, { first: season.startDate })];
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return [fault("stages-misplaced", path, stages, { reason: error.message })];
  }
}

function modifierFaults(
  { leafLoss, heat, flowering }: ModifiersFile,
  path: string,
  crop: CropFile | undefined,
): Fault[] {
  const found: Fault[] = [];
  if (leafLoss?.recoveredBy !== undefined && dayNumber(leafLoss.recoveredBy) <= dayNumber(leafLoss.date)) {
    found.push(
      fault("dates-not-rising", `${path}.leafLoss.recoveredBy`, leafLoss.recoveredBy, { before: leafLoss.date }),
    );
  }
  if (heat !== undefined) {
    const limitC = heat.limitC ?? cropDefaults.heatLimitC.value;
    const closedC = heat.closedC ?? cropDefaults.heatClosedC.value;
    if (closedC <= limitC)
      found.push(fault("not-above", `${path}.heat.closedC`, closedC, { other: "limitC", limit: limitC }));
  }
  if (flowering === undefined) return found;
  const at = `${path}.flowering.starts`;
  const starts = flowering.starts ?? phenologyOf(crop, 0).bloom;
  if (starts === undefined) {
    found.push(fault("missing", at, undefined, { expected: "a day, or a crop.preset with its bloom" }));
  } else if (!isDay(starts)) found.push(fault("not-a-day", at, starts));
  return found;
}

/** What the weather lacks that the tree's demand asks of it. */
export function airFaults(file: TreeDemandFile, path: string, air: DayAir): Fault[] {
  const known = (column: Float64Array): boolean => column.every((value) => Number.isFinite(value));
  const found: Fault[] = [];
  if (file.modifiers?.heat !== undefined && !(known(air.tMinC) && known(air.tMaxC))) {
    found.push(fault("weather-lacks", `${path}.modifiers.heat`, undefined, { columns: "tMinC and tMaxC" }));
  }
  const asked = file.climateAdjustment;
  if (asked !== undefined && asked !== "none" && !air.rhMinPct.some((value) => Number.isFinite(value))) {
    found.push(fault("weather-lacks", `${path}.climateAdjustment`, asked, { columns: "tMinC and tMaxC" }));
  }
  return found;
}

const isDay = (text: string): boolean => isMonthDay(text) || Number.isFinite(dayNumber(text));
