import { lineLayout } from "rootledger/lines";
import type { DemoBlock } from "./demo.js";
import type { ProgrammeScene, Scene } from "./scene.js";

/** Flow of the open emitters of one tree, L/h. */
export function treeFlowLPerH(block: DemoBlock, flowLPerH: number): number {
  const { offsetsM, emitterSpacingM, pluggedPerTree = 0 } = block.lines;
  return (lineLayout(offsetsM, block.treeSpacingM, emitterSpacingM).emittersPerTree - pluggedPerTree) * flowLPerH;
}

/** Runs that begin in the season. @example runsIn(126, { everyDays: 7 }, 0) // 18 */
function runsIn(seasonDays: number, programme: Pick<ProgrammeScene, "everyDays">, firstDay: number): number {
  return Math.ceil((seasonDays - firstDay) / programme.everyDays);
}

/** Litres that one run of each programme brings, so that the season's sum is the same for all. */
export function litresPerRun(scene: Scene, i: number, seasonDays: number, firstDay: number): number {
  return (scene.litresPerDay * seasonDays) / runsIn(seasonDays, scene.programmes[i]!, firstDay);
}

/** Length of one pulse as it will be run, minutes. */
export function pulseMinutesOf(
  scene: Scene,
  i: number,
  block: DemoBlock,
  seasonDays: number,
  firstDay: number,
): number {
  const programme = scene.programmes[i]!;
  if (!scene.sameLitres) return programme.pulseMinutes;
  const litres = litresPerRun(scene, i, seasonDays, firstDay);
  return (litres / treeFlowLPerH(block, programme.flowLPerH) / programme.pulses) * 60;
}

/** Litres per tree and day, over the season, that pulses of this length bring. */
export function litresPerDayOf(
  programme: ProgrammeScene,
  pulseMinutes: number,
  block: DemoBlock,
  seasonDays: number,
  firstDay: number,
): number {
  const runLitres = (treeFlowLPerH(block, programme.flowLPerH) * programme.pulses * pulseMinutes) / 60;
  return (runLitres * runsIn(seasonDays, programme, firstDay)) / seasonDays;
}
