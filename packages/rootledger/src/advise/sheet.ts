import { dateOf, dayNumber } from "../numeric/day-number.js";
import { everyPart } from "../scenario/every-part.js";
import { groundOf } from "../scenario/ground-of.js";
import type { Scenario } from "../scenario/scenario.js";
import { createSimulation } from "../scenario/simulation.js";
import { youngTree } from "../scenario/young-tree.js";
import { cm3PerL, mmPerCm } from "../units.js";
import type { SensorPlace } from "./sensor-place.js";
import { sensorTwin, type TwinDraws } from "./sensor-twin.js";

/** One opening of the valve, minutes since midnight of its day. */
export interface SheetOpening {
  readonly startMinutes: number;
  readonly minutes: number;
}

/** A reading that the advice expects; one outside the band refutes it. */
export interface ExpectedReading extends SensorPlace {
  readonly when: "before-run" | "after-run" | "next-morning";
  readonly lowKPa: number;
  readonly medianKPa: number;
  readonly highKPa: number;
}

/** What a grower needs on half a page. */
export interface Sheet {
  readonly blockName: string;
  readonly treeName: string;
  readonly soilName: string;
  readonly programmeName: string;
  readonly fromDate: string;
  /** Nothing here holds after this day. */
  readonly expiryDate: string;
  readonly weather: { readonly name: string; readonly from: string; readonly to: string };
  /** Of a day with water: at the emitters of one tree, over the ground, and for a hectare. */
  readonly litresPerTree: number;
  readonly depthMm: number;
  readonly m3PerHa: number;
  /** Openings of the first day with water. */
  readonly openings: readonly SheetOpening[];
  /** Days from one watering day to the next where that is even, else left out. */
  readonly everyDays?: number;
  readonly wateringDates: readonly string[];
  /** Latest closing on any day, minutes since its midnight. */
  readonly latestStopMinutes: number;
  /** EC of the water, dS/m, where the block says it. */
  readonly waterEcDsPerM?: number;
  readonly emitters: { readonly open: number; readonly plugged: number; readonly flowLPerH: number };
  readonly airReturnKPa: number;
  readonly pullLimitKPa: number;
  readonly expected: readonly ExpectedReading[];
}

/** How the sheet looks ahead. */
export interface SheetQuestion {
  /** Day of the season from which it holds. */
  readonly day: number;
  /** What the bands are drawn from. */
  readonly draws: TwinDraws;
  readonly shallowCm?: number;
  readonly deepCm?: number;
  /** Distance of both sensors from the outermost line, cm. */
  readonly fromLineCm?: number;
}

/** A sheet holds this long: weather and tree have moved on by then. Our choice, no source. */
const validDays = 14;
/** Usual depths of a pair of tensiometers. Source: Bender, UC Cooperative Extension: start by the one at 20 cm, stop by the one at 50 cm. */
const usualShallowCm = 20;
const usualDeepCm = 50;
const usualFromLineCm = 10;
/** After the last closing of a day, h, when the shallow sensor is read: the front has passed it. Our choice. */
const afterRunH = 2;
/** Hour of the morning at which the deep sensor is read. Our choice. */
const morningH = 6;

/** No run falls into the days that a sheet would hold: there is nothing to write down. */
export class NothingToWater extends RangeError {
  override readonly name = "NothingToWater";
}

/**
 * The grower's sheet of one scenario: litres, hours, starts, days, open emitters, latest stop and three readings that would
 * prove it wrong, with their band over draws of what is unknown. It holds for 14 days or to the end of the weather.
 *
 * @throws NothingToWater if no water is given within 14 days of the day.
 * @throws RangeError if the day lies outside the season, or as `sensorTwin`.
 * @example sheet(scenario, { day: 30, draws: { source: { kind: "priors", priors, seed: 1 }, members: 40 } }).latestStopMinutes
 */
export function sheet(scenario: Scenario, question: SheetQuestion): Sheet {
  const { day, draws } = question;
  const { season, block, soil, programme, weather } = scenario;
  if (!(Number.isInteger(day) && day >= 0 && day < season.days)) {
    throw new RangeError(`sheet requires a day of the season, 0 to ${season.days - 1}: got ${day}`);
  }
  const lastDay = Math.min(day + validDays, season.days);
  const { valveH, litresL } = wateringOf(scenario, day, lastDay);
  if (valveH.length === 0)
    throw new NothingToWater(`sheet requires water within ${validDays} days of day ${day}: got none`);
  const dayOf = wateringDays(valveH);
  const wetDays = [...new Set(dayOf)];
  const firstWet = wetDays[0];
  const openings = openingsOf(valveH, firstWet);
  const gaps = new Set(wetDays.slice(1).map((d, i) => d - wetDays[i]));
  const [gap] = gaps;
  const prepared = groundOf(scenario, { youngTree });
  const firstDay = dayNumber(season.startDate);
  const depthCm = (litresL * cm3PerL) / prepared.groundCm2;
  const perTree = (block.lines.offsetsM.length * block.treeSpacingM) / block.lines.emitterSpacingM;
  return {
    blockName: scenario.name,
    treeName: block.tree.name,
    soilName: soil.name,
    programmeName: programme.name,
    fromDate: dateOf(firstDay + day),
    expiryDate: dateOf(firstDay + lastDay - 1),
    weather: { name: weather.name, from: season.startDate, to: dateOf(firstDay + season.days - 1) },
    litresPerTree: litresL,
    depthMm: depthCm * mmPerCm,
    m3PerHa: depthCm * mmPerCm * 10,
    openings,
    ...(gaps.size === 1 ? { everyDays: gap } : {}),
    wateringDates: wetDays.map((d) => dateOf(firstDay + d)),
    latestStopMinutes: latestStop(valveH),
    ...(block.salt === undefined ? {} : { waterEcDsPerM: block.salt.waterEcDsPerM }),
    emitters: {
      open: Math.round((perTree - block.lines.pluggedPerTree) * 100) / 100,
      plugged: block.lines.pluggedPerTree,
      flowLPerH: programme.emitterFlowLPerH ?? block.lines.emitterFlowLPerH,
    },
    airReturnKPa: block.tree.limits.airReturnKPa,
    pullLimitKPa: block.tree.limits.pullLimitKPa,
    expected: expectedOf(scenario, question, draws, valveH, firstWet),
  };
}

/** Openings from one day to another, and litres per tree of the first day with water. */
function wateringOf(scenario: Scenario, day: number, lastDay: number) {
  const simulation = createSimulation(scenario, { ...everyPart(scenario), trees: ["mean"] });
  while (simulation.status().kind === "running" && simulation.hour() < lastDay * 24) simulation.step();
  const { valveH: all } = simulation.result();
  const kept: number[] = [];
  wateringDays(all).forEach((wetDay, run) => {
    if (wetDay >= day && wetDay < lastDay) kept.push(all[2 * run], all[2 * run + 1]);
  });
  const valveH = Float64Array.from(kept);
  const firstWet = Math.floor(kept[0] / 24);
  const minutes = openingsOf(valveH, firstWet).reduce((sum, opening) => sum + opening.minutes, 0);
  return { valveH, litresL: (groundOf(scenario, { youngTree }).treeFlowLPerH * minutes) / 60 };
}

/** A pulse that begins after midnight, within these hours of the last one, belongs to the day before. Our choice. */
const sameWateringH = 4;

/** The day of the season that each opening belongs to. */
function wateringDays(valveH: Float64Array): number[] {
  const days: number[] = [];
  for (let e = 0; e < valveH.length; e += 2) {
    const day = Math.floor(valveH[e] / 24);
    const before = days[days.length - 1];
    const follows = before !== undefined && day === before + 1 && valveH[e] - valveH[e - 1] <= sameWateringH;
    days.push(follows ? before : day);
  }
  return days;
}

function openingsOf(valveH: Float64Array, day: number): SheetOpening[] {
  const dayOf = wateringDays(valveH);
  const out: SheetOpening[] = [];
  for (let e = 0; e < valveH.length; e += 2) {
    if (dayOf[e / 2] !== day) continue;
    out.push({ startMinutes: (valveH[e] - day * 24) * 60, minutes: (valveH[e + 1] - valveH[e]) * 60 });
  }
  return out;
}

/** Over midnight a closing counts on from the midnight before its watering, so that it may exceed 24 h. */
function latestStop(valveH: Float64Array): number {
  const dayOf = wateringDays(valveH);
  let latest = 0;
  for (let e = 0; e < valveH.length; e += 2) {
    const stop = (valveH[e + 1] - dayOf[e / 2] * 24) * 60;
    if (stop > latest) latest = stop;
  }
  return latest;
}

function expectedOf(
  scenario: Scenario,
  { shallowCm = usualShallowCm, deepCm = usualDeepCm, fromLineCm = usualFromLineCm }: SheetQuestion,
  draws: TwinDraws,
  valveH: Float64Array,
  firstWet: number,
): ExpectedReading[] {
  const shallow = { depthCm: shallowCm, fromLineCm };
  const deep = { depthCm: deepCm, fromLineCm };
  const first = valveH[0];
  const dayOf = wateringDays(valveH);
  const last = valveH[2 * dayOf.lastIndexOf(firstWet) + 1];
  // The first morning after the last closing; where the lines close in its small hours, once the front has gone on.
  const morning = Math.max(Math.floor((last - morningH) / 24 + 1) * 24 + morningH, Math.ceil(last) + afterRunH);
  const asked = [
    { when: "before-run", place: 0, hour: Math.max(Math.floor(first) - 1, 0) },
    { when: "after-run", place: 0, hour: Math.ceil(last) + afterRunH - 1 },
    { when: "next-morning", place: 1, hour: morning - 1 },
  ] as const;
  const seasonH = scenario.season.days * 24;
  const within = asked.filter(({ hour }) => hour < seasonH);
  const hours = within.map(({ hour }) => hour);
  const fromHour = Math.min(...hours);
  const window = { places: [shallow, deep], fromHour, hours: Math.max(...hours) - fromHour + 1 };
  const { sensors } = sensorTwin(scenario, window, draws);
  return within.map(({ when, place, hour }) => {
    const { lowKPa, medianKPa, highKPa } = sensors[place];
    const at = hour - fromHour;
    return {
      ...[shallow, deep][place],
      when,
      lowKPa: lowKPa[at],
      medianKPa: medianKPa[at],
      highKPa: highKPa[at],
    };
  });
}
