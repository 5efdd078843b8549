import { type DemoFile, firstDayOf } from "./demo.js";
import { withProgramme } from "./fields.js";
import { litresPerDayOf, pulseMinutesOf, treeFlowLPerH } from "./same-litres.js";
import type { ProgrammeScene, Scene } from "./scene.js";

/** A programme as it will be run: what its sentence and the line under it show. */
export interface ProgrammePlan {
  readonly pulseMinutes: number;
  readonly runLitres: number;
  /** Hours the valve is open in one run. */
  readonly openHours: number;
  readonly litresPerDay: number;
}

export function plansOf(scene: Scene, file: DemoFile): readonly ProgrammePlan[] {
  return scene.programmes.map((programme, i) => {
    const pulseMinutes = pulseMinutesOf(scene, i, file.block, file.season.days, firstDayOf(file, i));
    const openHours = (pulseMinutes * programme.pulses) / 60;
    return {
      pulseMinutes,
      openHours,
      runLitres: openHours * treeFlowLPerH(file.block, programme.flowLPerH),
      litresPerDay: litresPerDayOf(programme, pulseMinutes, file.block, file.season.days, firstDayOf(file, i)),
    };
  });
}

/** A changed programme. Under equal litres, new minutes set the litres of all. */
export function changedProgramme(scene: Scene, i: number, change: Partial<ProgrammeScene>, file: DemoFile): Scene {
  const next = withProgramme(scene, i, change);
  if (!scene.sameLitres || change.pulseMinutes === undefined) return next;
  const { season, block } = file;
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
