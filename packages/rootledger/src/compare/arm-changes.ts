import type { Structure } from "../ground/structure.js";
import type { Programme } from "../programme/programme.js";
import { rainHeld } from "../scenario/rain-held.js";
import type { Comparison } from "../scenario/scenario.js";

/** Wet spell: rain of each day and how many days, from the middle of the season on. Our choice, no source. */
const spellMmPerDay = 20;
const spellDays = 5;
const hoursPerDay = 24;

/** The programme with the water of every run times a factor. @example timesDose(programme, 1.2).runs[0].amount */
export const timesDose = (programme: Programme, factor: number): Programme => ({
  ...programme,
  runs: programme.runs.map((run) => ({
    ...run,
    amount:
      "minutes" in run.amount
        ? { minutes: run.amount.minutes * factor }
        : { litresPerTree: run.amount.litresPerTree * factor },
  })),
});

/** All runs moved by the clock, so that the earliest begins at an hour. @example startingAt(programme, 22).runs[0].startH // 22 */
export function startingAt(programme: Programme, hour: number): Programme {
  const earliest = Math.min(...programme.runs.map(({ startH }) => startH));
  const runs = programme.runs.map((run) => ({ ...run, startH: (run.startH + hour - earliest) % hoursPerDay }));
  return { ...programme, runs };
}

/** The pulses of every run as one, every day with the mean day's water. Undefined for runs of unlike rhythm. @example dailySingle(programme, "one run a day")?.runs[0].pulses // 1 */
export function dailySingle(programme: Programme, name: string): Programme | undefined {
  const [run] = programme.runs;
  if (programme.runs.length !== 1 || run === undefined) return undefined;
  const perDay = 1 / run.everyDays;
  const once = timesDose(programme, perDay);
  return { ...once, name, runs: [{ ...once.runs[0], everyDays: 1, firstDay: 0, pulses: 1, gapMinutes: 0 }] };
}

/** Whether a programme already is one run a day, in one pulse. @example isDailySingle(programme) */
export const isDailySingle = ({ runs }: Programme): boolean =>
  runs.length === 1 && runs[0].everyDays === 1 && runs[0].pulses === 1;

/** Five days of 20 mm in the middle of the season on top of its rain; ET0 stays. @example withWetSpell(comparison).weather.rainMm */
export function withWetSpell(comparison: Comparison): Comparison {
  const { season, weather, block } = comparison;
  const from = Math.floor(season.days / 2);
  const isWet = (day: number): boolean => day >= from && day < from + spellDays;
  const rainMm = weather.rainMm.map((mm, day) => (isWet(day) ? mm + spellMmPerDay : mm));
  const ownRain = weather.hourly?.rainMm?.map((mm, hour) =>
    isWet(Math.floor(hour / 24)) ? mm + spellMmPerDay / 24 : mm,
  );
  const hourly = ownRain && { hourly: { ...weather.hourly, rainMm: ownRain } };
  const wet = { ...comparison, weather: { ...weather, rainMm, ...hourly } };
  if (block.surface === undefined) return wet;
  const { rain: _, ...surface } = block.surface;
  const rain = rainHeld(surface, rainMm);
  return { ...wet, block: { ...block, surface: rain === undefined ? surface : { ...surface, rain } } };
}

/** Every horizon whose curve comes from a texture, tight or crumbly; the others stay. @example withStructure(comparison, "tight").soils[0].horizons[0] */
export const withStructure = (comparison: Comparison, structure: Structure): Comparison => ({
  ...comparison,
  soils: comparison.soils.map((soil) => ({
    ...soil,
    horizons: soil.horizons.map((horizon) =>
      "texture" in horizon || "particles" in horizon ? { ...horizon, structure } : horizon,
    ),
  })),
});
