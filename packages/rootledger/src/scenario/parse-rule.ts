import type { RuleClock, WateringRule } from "../programme/rule.js";
import type { DefaultUsed } from "../water/result.js";
import { defaults } from "./defaults.js";
import { type Fault, fault } from "./faults.js";
import { amountFaults, amountIn, amountOf } from "./parse-amount.js";
import { pick } from "./parse-default.js";
import { ruleDefaults } from "./rule-defaults.js";
import type { RuleFile } from "./schema-rule.js";

/** What a rule cannot be checked without; undefined where the file's own is not readable. */
export interface SensorPlace {
  readonly seasonDays: number | undefined;
  /** Depth of the shallowest soil, and distance from the innermost line to mid-alley, cm. */
  readonly soilDepthCm: number | undefined;
  readonly lineToAlleyCm: number | undefined;
}

type ClockFile = Pick<RuleFile, "start" | "everyDays" | "firstDay" | "pulses" | "gapMinutes">;

/** What the shape of a rule cannot say: amounts, gaps, ages, where the sensor is. */
export function ruleFaults(rule: RuleFile, path: string, place: SensorPlace): Fault[] {
  const found = clockFaults(rule, path, place.seasonDays);
  if (rule.kind === "depletion") found.push(...amountFaults(rule, path, "optional"));
  if (rule.kind === "by-age") found.push(...ageFaults(rule, path));
  if (rule.kind === "tension") {
    found.push(...amountFaults(rule, path, "needed"));
    const within = (key: "depthCm" | "fromLineCm", most: number | undefined): void => {
      if (most !== undefined && rule[key] > most)
        found.push(fault("sensor-outside", `${path}.${key}`, rule[key], { most }));
    };
    within("depthCm", place.soilDepthCm);
    within("fromLineCm", place.lineToAlleyCm);
  }
  return found;
}

function ageFaults({ amounts, ageYearsAtStart }: Extract<RuleFile, { kind: "by-age" }>, path: string): Fault[] {
  const found = amounts.flatMap(({ fromYears }, i) => {
    if (i === 0 || fromYears > amounts[i - 1].fromYears) return [];
    return [fault("not-rising", `${path}.amounts[${i}].fromYears`, fromYears, { before: amounts[i - 1].fromYears })];
  });
  const [first] = amounts;
  if (first.fromYears > ageYearsAtStart) {
    found.push(fault("age-not-covered", `${path}.amounts[0].fromYears`, first.fromYears, { age: ageYearsAtStart }));
  }
  return found;
}

/** A gap that is missing, a first day beyond the season. */
export function clockFaults(file: ClockFile, path: string, seasonDays: number | undefined): Fault[] {
  const found: Fault[] = [];
  const pulses = file.pulses ?? defaults.pulses.value;
  if (pulses > 1 && file.gapMinutes === undefined)
    found.push(fault("gap-missing", `${path}.gapMinutes`, undefined, { pulses }));
  if (seasonDays !== undefined && file.firstDay !== undefined && file.firstDay >= seasonDays) {
    found.push(fault("run-outside-season", `${path}.firstDay`, file.firstDay, { last: seasonDays - 1 }));
  }
  return found;
}

/** Start, interval and pulses with their defaults filled in. */
export const filledClock = (file: ClockFile, path: string, used: DefaultUsed[]): RuleClock => ({
  startH: clockHours(file.start),
  everyDays: file.everyDays,
  firstDay: pick(used, `${path}.firstDay`, file.firstDay, defaults.firstDay),
  pulses: pick(used, `${path}.pulses`, file.pulses, defaults.pulses),
  gapMinutes: file.gapMinutes ?? 0,
});

/** A checked rule with its defaults filled in. */
export function filledRule(file: RuleFile, path: string, groundM2: number, used: DefaultUsed[]): WateringRule {
  const clock = filledClock(file, path, used);
  switch (file.kind) {
    case "by-month": {
      const amounts = file.amounts.map((amount) => amountIn(file.unit, amount, groundM2));
      const per = pick<"day" | "month">(used, `${path}.per`, file.per, ruleDefaults.amountsPer);
      return { ...clock, kind: file.kind, amounts, per };
    }
    case "by-age": {
      const { kind, ageYearsAtStart } = file;
      const amounts = file.amounts.map(({ fromYears, amount }) => ({
        fromYears,
        amount: amountIn(file.unit, amount, groundM2),
      }));
      return { ...clock, kind, ageYearsAtStart, amounts };
    }
    case "replace-use":
      return { ...clock, kind: file.kind, factor: pick(used, `${path}.factor`, file.factor, ruleDefaults.useFactor) };
    case "depletion": {
      const amount = amountOf(file, groundM2);
      const { kind, aboveFraction } = file;
      return { ...clock, kind, aboveFraction, ...(amount === undefined ? {} : { amount }) };
    }
    case "tension": {
      const { kind, aboveKPa, depthCm, fromLineCm } = file;
      return { ...clock, kind, aboveKPa, depthCm, fromLineCm, amount: amountOf(file, groundM2) ?? { minutes: 0 } };
    }
  }
}

/** @example clockHours("06:30") // 6.5 */
export function clockHours(clock: string): number {
  const [hours, minutes] = clock.split(":").map(Number);
  return hours + minutes / 60;
}
