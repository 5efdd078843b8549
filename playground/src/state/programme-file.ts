import { type DemoFile, firstDayOf } from "./demo.js";
import { blockUnder, litresPerWatering, ownOffsetsM, pulseMinutesOf, runsPerDay } from "./same-litres.js";
import type { ProgrammeScene, PumpScene, Scene } from "./scene.js";

/** Distance of a trigger's sensor from the line, cm: beside the emitter, where the ground is wetted; common practice, no source. */
const sensorFromLineCm = 15;

/** One programme of the scene as a comparison file has it. */
export function programmeFile(file: DemoFile, scene: Scene, i: number, name: string, fromDay: number): object {
  const programme = scene.programmes[i]!;
  const offsetsM = ownOffsetsM(scene.block, programme);
  const limits = limitsFile(scene.limits);
  return {
    name,
    emitterFlowLPerH: programme.flowLPerH,
    ...(offsetsM === undefined ? {} : { lines: { offsetsM } }),
    ...(programme.rule === "calendar"
      ? { runs: runsFile(file, scene, i, fromDay) }
      : { rule: ruleFile(file, scene, i, fromDay) }),
    ...(limits === undefined ? {} : { limits }),
  };
}

function clockOf({ everyDays, pulses, gapMinutes }: ProgrammeScene, firstDay: number, fromDay: number): object {
  return {
    everyDays,
    firstDay: phase(firstDay - fromDay, everyDays),
    pulses,
    ...(pulses > 1 ? { gapMinutes } : {}),
  };
}

function runsFile(file: DemoFile, scene: Scene, i: number, fromDay: number): object[] {
  const programme = scene.programmes[i]!;
  const starts = [programme.startTime, programme.againTime].slice(0, runsPerDay(programme));
  const amount = scene.sameLitres
    ? { litresPerTree: litresPerWatering(scene, i, file.season.days, firstDayOf(file, i)) / starts.length }
    : { minutes: programme.pulseMinutes * programme.pulses };
  return starts.map((start) => ({ start, ...clockOf(programme, firstDayOf(file, i), fromDay), ...amount }));
}

function ruleFile(file: DemoFile, scene: Scene, i: number, fromDay: number): object {
  const programme = scene.programmes[i]!;
  const { rule: kind, startTime: start, triggerFraction, triggerKPa, triggerDepthCm } = programme;
  const common = { kind, start, ...clockOf(programme, firstDayOf(file, i), fromDay) };
  if (kind === "replace-use") return common;
  if (kind === "depletion") return { ...common, aboveFraction: triggerFraction };
  const block = blockUnder(file.block, scene.block, programme);
  const minutes = pulseMinutesOf(scene, i, block, file.season.days, firstDayOf(file, i)) * programme.pulses;
  return { ...common, aboveKPa: triggerKPa, depthCm: triggerDepthCm, fromLineCm: sensorFromLineCm, minutes };
}

function limitsFile({ powerFrom, powerTo, keepToPower, skipRainMm, longestRunMinutes }: PumpScene): object | undefined {
  const limits = {
    ...(keepToPower && powerFrom !== "" && powerTo !== "" ? { allowedFrom: powerFrom, allowedTo: powerTo } : {}),
    ...(skipRainMm > 0 ? { skipFromRainMm: skipRainMm } : {}),
    ...(longestRunMinutes > 0 ? { longestRunMinutes } : {}),
  };
  return Object.keys(limits).length === 0 ? undefined : limits;
}

/** Day of the first run at or after the excerpt's start. @example phase(-3, 7) // 4 */
const phase = (day: number, everyDays: number): number =>
  day >= 0 ? day : ((day % everyDays) + everyDays) % everyDays;
