import { readFileSync } from "node:fs";
import { textureGroup } from "rootledger/ground";
import type { ChangeKind, EngineErrors, SoilGroup } from "../../packages/rootledger/src/compare/engine-errors.js";
import { type BothEnginesCase, bothEnginesCases, days, runBucket } from "./both-engines-case.js";
import type { KeptCase } from "./both-engines-make.js";
import type { Check } from "./strip-limits.js";

/** The same figures as the library states, here as measured. */
type Measured = { -readonly [Key in keyof EngineErrors]: number };

export const kept: readonly KeptCase[] = JSON.parse(
  readFileSync(new URL("cases/both-engines.json", import.meta.url), "utf8"),
).cases;

const hours = days * 24;

/** Differences between the engines in each change: weekly to daily, weekly to pulses (interval), daily to pulses (pulses). */
export function changeErrors(): Readonly<Record<SoilGroup, Record<ChangeKind, Measured>>> {
  const none = (): Measured => ({
    uptake: 0,
    thirstyTime: 0,
    airlessTime: 0,
    thirstySeverity: 0,
    airlessSeverity: 0,
    drainage: 0,
    evaporation: 0,
    runoff: 0,
    lowPoint: 0,
  });
  const both = (): Record<ChangeKind, Measured> => ({ interval: none(), pulses: none() });
  const worst: Record<SoilGroup, Record<ChangeKind, Measured>> = {
    coarse: both(),
    medium: both(),
    fine: both(),
    tight: both(),
    layered: both(),
  };
  const ours = new Map(bothEnginesCases.map((c) => [c.id, runBucket(c)]));
  const theirs = new Map(kept.map((k) => [k.id, k.richards]));
  for (const from of bothEnginesCases) {
    for (const to of bothEnginesCases) {
      if (from.soil.name !== to.soil.name || from.flowLPerH !== to.flowLPerH) continue;
      const kind = changeKind(from.programme, to.programme);
      const [a, b, ra, rb] = [ours.get(from.id), ours.get(to.id), theirs.get(from.id), theirs.get(to.id)];
      if (!kind || !a || !b || !ra || !rb) continue;
      const group = groupOf(from.soil.horizons);
      const entry = worst[group][kind];
      const grow = (key: keyof Measured, id: string, over: number): void => {
        entry[key] = Math.max(entry[key], Math.abs(b[id] - a[id] - (rb[id] - ra[id])) / over);
      };
      grow("uptake", "transpiration-ratio", 1);
      grow("thirstyTime", "thirsty", hours);
      grow("airlessTime", "airless", hours);
      grow("thirstySeverity", "thirsty-severity", hours);
      grow("airlessSeverity", "airless-severity", hours);
      grow("drainage", "below-roots", a.applied);
      grow("evaporation", "evaporation", a.applied);
      grow("runoff", "runoff", a.applied);
      grow("lowPoint", "window-low-point", 1);
    }
  }
  return worst;
}

/**
 * The change in airless root-hours from one programme to another, h a week, beside the slow engine's. Own aim: within 25 % of
 * that or 2 h a week.
 */
export function airlessChanges(): Check[] {
  const ours = new Map(bothEnginesCases.map((c) => [c.id, runBucket(c).airless]));
  const theirs = new Map(kept.map((k) => [k.id, k.richards.airless]));
  const pairs = bothEnginesCases.flatMap((from) =>
    bothEnginesCases
      .filter((to) => from.soil.name === to.soil.name && from.flowLPerH === to.flowLPerH)
      .filter((to) => changeKind(from.programme, to.programme) !== undefined)
      .map((to) => ({ from, to })),
  );
  return pairs.map(({ from, to }) => {
    const perWeek = (runs: ReadonlyMap<string, number | undefined>): number =>
      (((runs.get(to.id) ?? Number.NaN) - (runs.get(from.id) ?? Number.NaN)) * 7) / days;
    const [fast, slow] = [perWeek(ours), perWeek(theirs)];
    const bound = Math.max(2, 0.25 * Math.abs(slow));
    const pass = Math.abs(fast - slow) <= bound;
    return { name: `${from.id} to ${to.programme}`, ours: fast, reference: slow, unit: "h a week", bound, pass };
  });
}

/** What a change of programme changes; undefined where it is the reverse of one that counts. */
export function changeKind(from: string, to: string): ChangeKind | undefined {
  if (from === "weekly" && to !== "weekly") return "interval";
  return from === "daily" && to === "four pulses" ? "pulses" : undefined;
}

/** The group of a case's soil as the floors see it. */
export function groupOf(horizons: BothEnginesCase["soil"]["horizons"]): SoilGroup {
  const [top] = horizons;
  if (horizons.some((h) => h.texture !== top.texture)) return "layered";
  const group = textureGroup(top.texture);
  return group === "fine" && top.structure === "tight" ? "tight" : group;
}
