import { lineLayout } from "rootledger/lines";
import { lineOffsetsM } from "./block-file.js";
import type { DemoBlock } from "./demo.js";
import type { BlockScene, ProgrammeScene, Scene } from "./scene.js";

/** Flow of the open emitters of one tree, L/h. */
export const treeFlowLPerH = (block: DemoBlock, flowLPerH: number): number => openEmitters(block) * flowLPerH;

/** Open emitters of one tree. */
export function openEmitters({ lines, treeSpacingM }: DemoBlock): number {
  const { offsetsM, emitterSpacingM, pluggedPerTree = 0 } = lines;
  return lineLayout(offsetsM, treeSpacingM, emitterSpacingM).emittersPerTree - pluggedPerTree;
}

/** Where a programme's own lines lie; undefined where it runs through the block's. */
export function ownOffsetsM(
  block: BlockScene,
  { lines }: Pick<ProgrammeScene, "lines">,
): readonly number[] | undefined {
  return lines === 0 || lines === block.lines ? undefined : lineOffsetsM(lines, block.lineDistanceM);
}

/** The block with the lines that a programme runs through. */
export function blockUnder(file: DemoBlock, block: BlockScene, programme: ProgrammeScene): DemoBlock {
  const offsetsM = ownOffsetsM(block, programme);
  return offsetsM === undefined ? file : { ...file, lines: { ...file.lines, offsetsM } };
}

/** Openings of a day with water, each of as many pulses. */
export const runsPerDay = ({ againTime, rule }: Pick<ProgrammeScene, "againTime" | "rule">): number =>
  againTime !== "" && rule === "calendar" ? 2 : 1;

/** Days with water in the season. @example wateringDays(126, { everyDays: 7 }, 0) // 18 */
function wateringDays(seasonDays: number, programme: Pick<ProgrammeScene, "everyDays">, firstDay: number): number {
  return Math.ceil((seasonDays - firstDay) / programme.everyDays);
}

/** Litres that a day with water brings under each programme, so that the season's sum is the same for all. */
export function litresPerWatering(scene: Scene, i: number, seasonDays: number, firstDay: number): number {
  return (scene.litresPerDay * seasonDays) / wateringDays(seasonDays, scene.programmes[i]!, firstDay);
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
  const litres = litresPerWatering(scene, i, seasonDays, firstDay);
  return (litres / treeFlowLPerH(block, programme.flowLPerH) / (programme.pulses * runsPerDay(programme))) * 60;
}

/** Litres per tree and day, over the season, that pulses of this length bring. */
export function litresPerDayOf(
  programme: ProgrammeScene,
  pulseMinutes: number,
  block: DemoBlock,
  seasonDays: number,
  firstDay: number,
): number {
  const minutes = programme.pulses * runsPerDay(programme) * pulseMinutes;
  const litres = (treeFlowLPerH(block, programme.flowLPerH) * minutes) / 60;
  return (litres * wateringDays(seasonDays, programme, firstDay)) / seasonDays;
}
