import type { PumpLimits } from "../programme/rule.js";
import { type Fault, fault } from "./faults.js";
import { clockHours } from "./parse-rule.js";
import type { ProgrammeFile } from "./schema-programme.js";
import type { PumpLimitsFile } from "./schema-rule.js";

/** Half a window of the clock, an empty one, or lengths that contradict each other. */
export function pumpLimitFaults(limits: PumpLimitsFile, path: string): Fault[] {
  const { allowedFrom, allowedTo, shortestPulseMinutes, longestRunMinutes } = limits;
  const found: Fault[] = [];
  if (allowedFrom === undefined && allowedTo !== undefined)
    found.push(fault("goes-with", `${path}.allowedFrom`, undefined, { other: "allowedTo" }));
  if (allowedTo === undefined && allowedFrom !== undefined)
    found.push(fault("goes-with", `${path}.allowedTo`, undefined, { other: "allowedFrom" }));
  if (allowedFrom !== undefined && allowedFrom === allowedTo)
    found.push(fault("same-moment", `${path}.allowedTo`, allowedTo, { other: "allowedFrom" }));
  if (
    shortestPulseMinutes !== undefined &&
    longestRunMinutes !== undefined &&
    shortestPulseMinutes >= longestRunMinutes
  )
    found.push(
      fault("not-below", `${path}.shortestPulseMinutes`, shortestPulseMinutes, {
        other: "longestRunMinutes",
        limit: longestRunMinutes,
      }),
    );
  return found;
}

/** Starts at which the valve may not be open. */
export function startFaults({ runs = [], rule, limits = {} }: ProgrammeFile, path: string): Fault[] {
  const { allowedFrom, allowedTo } = limits;
  if (allowedFrom === undefined || allowedTo === undefined) return [];
  const check = (start: string, at: string): Fault[] => {
    const sinceH = (clockHours(start) - clockHours(allowedFrom) + 24) % 24;
    const lengthH = (clockHours(allowedTo) - clockHours(allowedFrom) + 24) % 24;
    if (lengthH === 0 || sinceH < lengthH) return [];
    return [fault("start-not-allowed", `${at}.start`, start, { from: allowedFrom, to: allowedTo })];
  };
  return [
    ...runs.flatMap(({ start }, i) => check(start, `${path}.runs[${i}]`)),
    ...(rule === undefined ? [] : check(rule.start, `${path}.rule`)),
  ];
}

/** Checked limits as the model takes them. */
export function filledPumpLimits({ allowedFrom, allowedTo, ...others }: PumpLimitsFile): PumpLimits {
  const given = Object.entries(others).filter(([, value]) => value !== undefined);
  return {
    ...Object.fromEntries(given),
    ...(allowedFrom === undefined || allowedTo === undefined
      ? {}
      : { allowed: { fromH: clockHours(allowedFrom), toH: clockHours(allowedTo) } }),
  };
}
