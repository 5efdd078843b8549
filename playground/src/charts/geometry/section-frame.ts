import type { Result } from "rootledger";

/** Places of the cross-section's parts, px; the tree row is in the middle. */
export interface SectionFrame {
  /** Left edge of the ground; what is left of it carries the depths. */
  readonly left: number;
  readonly width: number;
  readonly skyHeight: number;
  readonly soilHeight: number;
  readonly halfWidthCm: number;
  readonly depthCm: number;
  /** Px per cm across; depth is drawn `stretch` times as large. */
  readonly scale: number;
  readonly stretch: number;
  readonly x: (cmFromRow: number) => number;
  readonly y: (depthCm: number) => number;
}

/** The picture shows the rooted ground and as much again beside it, at least this far from the row, cm. */
const leastHalfWidthCm = 140;
/** Depth is drawn this much larger than width where there is room. */
const widestStretch = 2.2;

/** Room that the picture may take, px. */
export interface SectionRoom {
  readonly width: number;
  /** Kept free on the left for the depths. */
  readonly left: number;
  readonly em: number;
  /** Two soils must fit on one screen. */
  readonly compact: boolean;
  /** Half-width that pictures side by side share, cm; 0 where each has its own. */
  readonly reachCm: number;
}

export function sectionFrame(
  section: Result["section"],
  { width: fullWidth, left, em, compact, reachCm }: SectionRoom,
): SectionFrame {
  const { laneEdgesCm, layerEdgesCm, lanes, layers } = section;
  const midAlleyCm = laneEdgesCm[lanes]!;
  const halfWidthCm = Math.min(midAlleyCm, Math.max(leastHalfWidthCm, rootedReachCm(section), reachCm));
  const depthCm = layerEdgesCm[layers]!;
  const width = fullWidth - left;
  const scale = width / (2 * halfWidthCm);
  const soilHeight = Math.round(Math.min(depthCm * scale * widestStretch, width * (compact ? 0.34 : 0.6)));
  const skyHeight = Math.round((compact ? 3.1 : 4) * em);
  return {
    left,
    width,
    skyHeight,
    soilHeight,
    halfWidthCm,
    depthCm,
    scale,
    stretch: soilHeight / (depthCm * scale),
    x: (cm) => left + width / 2 + cm * scale,
    y: (cm) => skyHeight + (cm / depthCm) * soilHeight,
  };
}

/** How far the picture of a section reaches so that its roots are in it, cm from the tree row. */
export const rootedReachCm = (section: Result["section"]): number => rootedToCm(section) * 1.06;

/** Outer edge of the lanes that have roots, cm from the tree row. */
function rootedToCm({ rootShare, laneEdgesCm, lanes, layers }: Result["section"]): number {
  let rooted = 0;
  for (let lane = 0; lane < lanes; lane++) {
    for (let layer = 0; layer < layers; layer++) {
      if (rootShare[layer * lanes + lane]! > 0) rooted = laneEdgesCm[lane + 1]!;
    }
  }
  return rooted;
}
