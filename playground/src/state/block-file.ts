import type { DemoBlock } from "./demo.js";
import type { BlockScene } from "./scene.js";

/** Bore of the usual dripline, mm; common practice, no source. */
const boreMm = 14;

/** Distances of the lines from the tree row, m. @example lineOffsetsM(2, 1) // [-0.5, 0.5] */
export const lineOffsetsM = (lines: number, distanceM: number): number[] =>
  Array.from({ length: lines }, (_, i) => Math.round((i - (lines - 1) / 2) * distanceM * 1000) / 1000);

/** The part of the scene that a file's block says. Roots that the file leaves to the library's defaults are those given here. */
export function blockScene(block: DemoBlock, roots: Pick<BlockScene, "rootRadiusM" | "rootDepthCm">): BlockScene {
  const { offsetsM, emitterSpacingM } = block.lines;
  return {
    treeSpacingM: block.treeSpacingM,
    rowSpacingM: block.rowSpacingM,
    canopyDiameterM: block.tree.canopyDiameterM,
    lines: offsetsM.length,
    lineDistanceM: offsetsM.length > 1 ? Math.round((offsetsM[1]! - offsetsM[0]!) * 1000) / 1000 : 0.5,
    emitterSpacingM,
    plugged: [],
    drains: false,
    roots: "mature",
    wettedRadiusM: 0.3,
    sectorTrees: 0,
    smallestFlowLPerH: 0,
    compensating: true,
    waterEcDsPerM: 0,
    ...roots,
  };
}

/** The lines that have an open emitter, and how many of theirs are plugged; every line, where the rest would lie on one side of the row only. */
function openLines(scene: BlockScene): Pick<DemoBlock["lines"], "offsetsM" | "pluggedPerTree"> {
  const offsetsM = lineOffsetsM(scene.lines, scene.lineDistanceM);
  const perLine = Math.floor(scene.treeSpacingM / scene.emitterSpacingM + 1e-9);
  const shut = (i: number): number => scene.plugged.filter((place) => Math.floor(place / perLine) === i).length;
  const used = offsetsM.filter((_, i) => shut(i) < perLine);
  const mirrored = used.every((at) => used.some((other) => Math.abs(other + at) < 1e-6));
  const [kept, plugged] =
    mirrored && used.length > 0
      ? [used, scene.plugged.length - (offsetsM.length - used.length) * perLine]
      : [offsetsM, scene.plugged.length];
  return { offsetsM: kept, ...(plugged > 0 ? { pluggedPerTree: plugged } : {}) };
}

/** The file's block with what the scene changes of it; what is unchanged stays as the file has it. */
export function blockFile(block: DemoBlock, initial: BlockScene, scene: BlockScene): DemoBlock {
  if (JSON.stringify(scene) === JSON.stringify(initial)) return block;
  const changed = (key: keyof BlockScene): boolean => scene[key] !== initial[key];
  const shaded = changed("canopyDiameterM") || changed("treeSpacingM") || changed("rowSpacingM");
  const roots = {
    ...(changed("rootDepthCm") ? { depthCm: scene.rootDepthCm } : {}),
    ...(scene.roots === "disc" ? { lateral: { kind: "disc", radiusCm: scene.rootRadiusM * 100 } } : {}),
  };
  return {
    ...block,
    treeSpacingM: scene.treeSpacingM,
    rowSpacingM: scene.rowSpacingM,
    tree: {
      ...block.tree,
      canopyDiameterM: scene.canopyDiameterM,
      // The file's coefficients are of its own orchard; what another one wants goes with the ground that it shades.
      ...(shaded ? { cover: block.tree.cover ?? { rule: "relative-density" } } : {}),
      ...(Object.keys(roots).length > 0 ? { roots } : {}),
    },
    ...(scene.waterEcDsPerM > 0 ? { salt: { waterEcDsPerM: scene.waterEcDsPerM } } : {}),
    lines: {
      ...block.lines,
      emitterSpacingM: scene.emitterSpacingM,
      ...openLines(scene),
      ...(scene.drains ? { drainOut: { innerDiameterMm: boreMm } } : {}),
    },
  };
}
