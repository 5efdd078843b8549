import { type DemoFile, firstDayOf } from "./demo.js";
import { blockUnder, litresPerDayOf, openEmitters, pulseMinutesOf, runsPerDay } from "./same-litres.js";
import type { ProgrammeScene, Scene } from "./scene.js";
import { withProgramme } from "./scene-edits.js";

/** A litre on a square metre is 10 m3 on a hectare. */
const cubicMetresPerLitreM2PerHa = 10;

/** A programme as it will be run: what its sentence and the line under it show. */
export interface ProgrammePlan {
  readonly pulseMinutes: number;
  readonly runLitres: number;
  /** Hours the valve is open on a day with water. */
  readonly openHours: number;
  readonly litresPerDay: number;
  /** Open emitters of one tree and their flow together. */
  readonly emitters: number;
  readonly flowLPerH: number;
  /** Water of a mean day on a hectare. */
  readonly m3PerHaDay: number;
}

export function plansOf(scene: Scene, file: DemoFile): readonly ProgrammePlan[] {
  return scene.programmes.map((programme, i) => {
    const block = blockUnder(file.block, scene.block, programme);
    const pulseMinutes = pulseMinutesOf(scene, i, block, file.season.days, firstDayOf(file, i));
    const openHours = (pulseMinutes * programme.pulses * runsPerDay(programme)) / 60;
    const litresPerDay = litresPerDayOf(programme, pulseMinutes, block, file.season.days, firstDayOf(file, i));
    const emitters = openEmitters(block);
    const flowLPerH = emitters * programme.flowLPerH;
    return {
      pulseMinutes,
      openHours,
      runLitres: openHours * flowLPerH,
      litresPerDay,
      emitters,
      flowLPerH,
      m3PerHaDay: (litresPerDay * cubicMetresPerLitreM2PerHa) / (block.treeSpacingM * block.rowSpacingM),
    };
  });
}

/** A changed programme. Under equal litres, new minutes set the litres of all. */
export function changedProgramme(scene: Scene, i: number, change: Partial<ProgrammeScene>, file: DemoFile): Scene {
  const next = withProgramme(scene, i, change);
  if (!scene.sameLitres || change.pulseMinutes === undefined) return next;
  const { season } = file;
  const block = blockUnder(file.block, scene.block, next.programmes[i]!);
  const litres = litresPerDayOf(next.programmes[i]!, change.pulseMinutes, block, season.days, firstDayOf(file, i));
  return { ...next, litresPerDay: Math.round(litres * 100) / 100 };
}

/** Lets every programme keep the minutes it has now, free of the others. */
export function unlockedScene(scene: Scene, file: DemoFile): Scene {
  const plans = plansOf(scene, file);
  const programmes = scene.programmes.map((p, i) => ({
    ...p,
    pulseMinutes: Math.round(plans[i]!.pulseMinutes * 100) / 100,
  }));
  return { ...scene, sameLitres: false, programmes };
}

/** Holds the litres of all programmes at those of the first. */
export function lockedScene(scene: Scene, file: DemoFile): Scene {
  return { ...scene, sameLitres: true, litresPerDay: Math.round(plansOf(scene, file)[0]!.litresPerDay * 100) / 100 };
}
