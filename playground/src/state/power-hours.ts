import { openHours } from "rootledger/programme";
import type { ProgrammePlan } from "./programme-plan.js";
import { runsPerDay } from "./same-litres.js";
import type { ProgrammeScene, PumpScene } from "./scene.js";

/** Hours of the valve on a day with water, and how many of them lie outside of cheap power. Undefined where there is no such window. */
export function dearHours(
  programme: ProgrammeScene,
  { pulseMinutes }: ProgrammePlan,
  { powerFrom, powerTo }: PumpScene,
): { readonly openH: number; readonly dearH: number } | undefined {
  if (powerFrom === "" || powerTo === "" || powerFrom === powerTo) return undefined;
  const starts = [programme.startTime, programme.againTime].slice(0, runsPerDay(programme)).map(hoursOf);
  const lengthH = pulseMinutes / 60;
  const stepH = lengthH + programme.gapMinutes / 60;
  const valveH = starts.flatMap((startH) =>
    Array.from({ length: programme.pulses }, (_, i) => [startH + i * stepH, startH + i * stepH + lengthH]).flat(),
  );
  const openings = Float64Array.from(valveH).sort();
  const fromH = hoursOf(powerFrom);
  const cheapH = (hoursOf(powerTo) - fromH + 24) % 24;
  const lastDay = Math.ceil((openings.at(-1) ?? 0) / 24);
  let cheap = 0;
  for (let day = -1; day <= lastDay; day++) {
    cheap += openHours(openings, day * 24 + fromH, day * 24 + fromH + cheapH);
  }
  const openH = lengthH * programme.pulses * starts.length;
  return { openH, dearH: Math.max(0, openH - cheap) };
}

/** @example hoursOf("06:30") // 6.5 */
function hoursOf(time: string): number {
  const [hours, minutes] = time.split(":").map(Number);
  return hours! + minutes! / 60;
}
