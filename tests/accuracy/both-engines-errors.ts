import { readFileSync } from "node:fs";
import { bothEnginesCases, days, runBucket } from "./both-engines-case.js";
import type { KeptCase } from "./both-engines-make.js";

export type Group = "coarse" | "medium" | "fine" | "tight" | "layered";
export type Change = "interval" | "pulses";

/** Largest differences between the two engines in what a change of programme does, one group of soils, one kind of change. */
export interface ChangeErrors {
  /** Of the demand. */
  uptake: number;
  /** Of the hours. */
  thirstyTime: number;
  airlessTime: number;
  thirstySeverity: number;
  airlessSeverity: number;
  /** Of the water applied. */
  drainage: number;
  evaporation: number;
  runoff: number;
  /** Of the window. */
  lowPoint: number;
}

export const kept: readonly KeptCase[] = JSON.parse(
  readFileSync(new URL("cases/both-engines.json", import.meta.url), "utf8"),
).cases;

const groups: Readonly<Record<string, Group>> = {
  sand: "coarse",
  "loamy sand": "coarse",
  "sandy loam": "coarse",
  loam: "medium",
  "silt loam": "medium",
  silt: "medium",
  "sandy clay loam": "medium",
};

const hours = days * 24;

/** Differences between the engines in each change: weekly to daily, weekly to pulses (interval), daily to pulses (pulses). */
export function changeErrors(): Readonly<Record<Group, Record<Change, ChangeErrors>>> {
  const none = (): ChangeErrors => ({
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
  const both = (): Record<Change, ChangeErrors> => ({ interval: none(), pulses: none() });
  const worst: Record<Group, Record<Change, ChangeErrors>> = {
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
      const grow = (key: keyof ChangeErrors, id: string, over: number): void => {
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

function changeKind(from: string, to: string): Change | undefined {
  if (from === "weekly" && to !== "weekly") return "interval";
  return from === "daily" && to === "four pulses" ? "pulses" : undefined;
}

function groupOf(horizons: readonly { readonly texture: string; readonly structure: string }[]): Group {
  const [top] = horizons;
  if (horizons.some((h) => h.texture !== top.texture)) return "layered";
  const group = groups[top.texture] ?? "fine";
  return group === "fine" && top.structure === "tight" ? "tight" : group;
}
