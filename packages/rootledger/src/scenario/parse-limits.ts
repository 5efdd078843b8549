import type { CropPreset } from "../tree/crop-preset.js";
import { isMonthDay } from "../tree/month-day.js";
import type { DefaultUsed } from "../water/result.js";
import { rootDefaults } from "./crop-defaults.js";
import { defaults } from "./defaults.js";
import { type Fault, fault } from "./faults.js";
import { isWithin } from "./limits-by-day.js";
import { pick } from "./parse-default.js";
import type { LimitPeriod, Limits } from "./scenario.js";
import type { LimitPeriodFile, LimitsFile } from "./schema-block.js";

/** Limits that contradict one another, in the tree's own and in each period's. */
export function limitFaults(file: LimitsFile, path: string, preset: CropPreset | undefined): Fault[] {
  const limits = filledLimits(file, path, preset, []);
  const found = contradictions(limits, path);
  found.push(...lowDemandFaults(limits, path, ""));
  const periods = file.periods ?? [];
  periods.forEach((period, i) => {
    const at = `${path}.periods[${i}]`;
    found.push(...periodFaults(period, periods.slice(0, i), at));
    if (found.length > 0) return;
    const inPeriod = { ...limits, ...filledPeriod(period).limits };
    found.push(...contradictions(inPeriod, at), ...lowDemandFaults(inPeriod, path, `periods[${i}].`));
  });
  return found;
}

function periodFaults(period: LimitPeriodFile, before: readonly LimitPeriodFile[], path: string): Fault[] {
  const days = (["from", "to"] as const).flatMap((end) =>
    isMonthDay(period[end]) ? [] : [fault("not-a-month-day", `${path}.${end}`, period[end])],
  );
  if (days.length > 0) return days;
  const shared = before.find(
    (other) => isWithin(other, period.from) || isWithin(other, period.to) || isWithin(period, other.from),
  );
  return shared === undefined ? [] : [fault("periods-overlap", path, period.name, { other: shared.name })];
}

/** @param owner where the other limits stand, as it goes before their names */
function lowDemandFaults(limits: Limits, path: string, owner: string): Fault[] {
  const { pullLimitLowDemandKPa: given, pullLimitKPa, zeroUptakeKPa } = limits;
  const at = `${path}.pullLimitLowDemandKPa`;
  if (given === undefined) return [];
  if (given < pullLimitKPa) {
    return [fault("not-drier", at, given, { other: `${owner}pullLimitKPa`, limit: pullLimitKPa })];
  }
  if (given < zeroUptakeKPa) return [];
  return [fault("not-below", at, given, { other: `${owner}zeroUptakeKPa`, limit: zeroUptakeKPa })];
}

function contradictions(limits: Limits, path: string): Fault[] {
  const found: Fault[] = [];
  const drier = (field: "pullLimitKPa" | "zeroUptakeKPa", other: "airReturnKPa" | "pullLimitKPa"): void => {
    if (limits[field] > limits[other]) return;
    found.push(fault("not-drier", `${path}.${field}`, limits[field], { other, limit: limits[other] }));
  };
  drier("pullLimitKPa", "airReturnKPa");
  drier("zeroUptakeKPa", "pullLimitKPa");
  if (limits.airZeroFraction >= limits.airLimitFraction) {
    const terms = { other: "airLimitFraction", limit: limits.airLimitFraction };
    found.push(fault("not-below", `${path}.airZeroFraction`, limits.airZeroFraction, terms));
  }
  return found;
}

/** Limits with their defaults filled in, checked or not. */
export function filledLimits(
  file: LimitsFile,
  path: string,
  preset: CropPreset | undefined,
  used: DefaultUsed[],
): Limits {
  const usual = rootDefaults(preset);
  const { pullLimitLowDemandKPa, periods } = file;
  return {
    pullLimitKPa: pick(used, `${path}.pullLimitKPa`, file.pullLimitKPa, usual.pullLimitKPa),
    zeroUptakeKPa: pick(used, `${path}.zeroUptakeKPa`, file.zeroUptakeKPa, usual.zeroUptakeKPa),
    airLimitFraction: pick(used, `${path}.airLimitFraction`, file.airLimitFraction, usual.airLimitFraction),
    airZeroFraction: pick(used, `${path}.airZeroFraction`, file.airZeroFraction, defaults.airZeroFraction),
    airReturnKPa: pick(used, `${path}.airReturnKPa`, file.airReturnKPa, usual.airReturnKPa),
    ...(pullLimitLowDemandKPa === undefined ? {} : { pullLimitLowDemandKPa }),
    ...(periods === undefined ? {} : { periods: periods.map(filledPeriod) }),
  };
}

function filledPeriod({ name, from, to, ...own }: LimitPeriodFile): LimitPeriod {
  const given = Object.entries(own).filter(([, value]) => value !== undefined);
  return { name, from, to, limits: Object.fromEntries(given) };
}
