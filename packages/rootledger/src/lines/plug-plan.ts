import { circleOverlap } from "../numeric/circle-overlap.js";
import { type EmitterPlace, emittersOfTree, type RowLayout } from "./emitters-of-tree.js";
import { type WettedGround, wettedGround } from "./wetted-ground.js";

/** One row of trees, its emitters, which of them are open, and what stands behind the valve. */
export interface PlugQuestion {
  readonly layout: RowLayout & { readonly rowSpacingM: number };
  readonly emitterFlowLPerH: number;
  /** One word for each emitter of `emittersOfTree(layout)`, true where open. */
  readonly open: readonly boolean[];
  /** Radius of the ground that one emitter wets, dug or estimated. */
  readonly wettedRadiusM: number;
  readonly rootRadiusM: number;
  readonly canopyDiameterM: number;
  readonly pressureCompensating: boolean;
  /** The sector, where known. */
  readonly sector?: { readonly trees: number; readonly smallestFlowLPerH: number };
}

/** What open and plugged emitters do for a young tree. */
export interface PlugPlan {
  readonly emitters: readonly EmitterPlace[];
  readonly openPerTree: number;
  readonly pluggedPerTree: number;
  readonly flowLPerH: number;
  /** Share of the open emitters' water that falls on the root disc, its circle evenly wet. */
  readonly usefulShare: number;
  readonly ground: WettedGround;
  /** Wetted ground over the tree's ground. */
  readonly wettedShare: number;
  /** Flow over the wetted ground; beyond what the soil takes in, water ponds and runs. */
  readonly applicationMmPerH: number;
  /** Flow of the sector with this pattern and with all emitters open, L/h. */
  readonly sectorFlow?: { readonly nowLPerH: number; readonly allOpenLPerH: number };
  readonly warnings: readonly PlugWarning[];
}

/** What to look at before the emitters are plugged. Words are made from code and figures. */
export type PlugWarning =
  | { readonly code: "circles-do-not-join"; readonly gapM: number; readonly wettedDiameterM: number }
  | { readonly code: "below-smallest-flow"; readonly flowLPerH: number; readonly smallestFlowLPerH: number }
  | { readonly code: "pressure-rises"; readonly pluggedPerTree: number }
  | { readonly code: "wets-trunk"; readonly nearestM: number };

/**
 * What a pattern of open and plugged emitters does for one tree: litres on roots and on nothing, ground wetted, flow of the
 * sector, and warnings. A comparison of places and areas; what the water does in the soil is for `simulate`.
 *
 * @throws RangeError where `emittersOfTree` and `wettedGround` do, if no emitter is open or the flow is not above 0.
 * @example plugPlan({ layout: { offsetsM: [0], treeSpacingM: 4, rowSpacingM: 6, emitterSpacingM: 1 }, emitterFlowLPerH: 2, open: [false, true, true, false], wettedRadiusM: 0.3, rootRadiusM: 1, canopyDiameterM: 1, pressureCompensating: true }).usefulShare // 1
 */
export function plugPlan(question: PlugQuestion): PlugPlan {
  const { layout, emitterFlowLPerH, open, wettedRadiusM, rootRadiusM, canopyDiameterM, sector } = question;
  const emitters = emittersOfTree(layout);
  const openPerTree = open.filter(Boolean).length;
  if (openPerTree === 0 || !(emitterFlowLPerH > 0)) {
    throw new RangeError(
      `plugPlan requires an open emitter and a flow above 0: got ${openPerTree}, ${emitterFlowLPerH}`,
    );
  }
  const { treeSpacingM, rowSpacingM } = layout;
  const areas = { wettedRadiusM, rootRadiusM, canopyRadiusM: canopyDiameterM / 2, treeSpacingM, rowSpacingM };
  const ground = wettedGround(emitters, open, areas);
  const circleM2 = Math.PI * wettedRadiusM * wettedRadiusM;
  let useful = 0;
  emitters.forEach(({ fromTrunkM }, at) => {
    if (open[at]) useful += circleOverlap(wettedRadiusM, rootRadiusM, fromTrunkM) / circleM2;
  });
  const flowLPerH = openPerTree * emitterFlowLPerH;
  return {
    emitters,
    openPerTree,
    pluggedPerTree: emitters.length - openPerTree,
    flowLPerH,
    usefulShare: useful / openPerTree,
    ground,
    wettedShare: ground.wettedM2 / (treeSpacingM * rowSpacingM),
    applicationMmPerH: flowLPerH / ground.wettedM2,
    ...(sector === undefined
      ? {}
      : {
          sectorFlow: {
            nowLPerH: sector.trees * flowLPerH,
            allOpenLPerH: sector.trees * emitters.length * emitterFlowLPerH,
          },
        }),
    warnings: warningsOf(question, emitters, openPerTree),
  };
}

function warningsOf(question: PlugQuestion, emitters: readonly EmitterPlace[], openPerTree: number): PlugWarning[] {
  const { open, wettedRadiusM, sector, pressureCompensating, emitterFlowLPerH, layout } = question;
  const found: PlugWarning[] = [];
  const wettedDiameterM = 2 * wettedRadiusM;
  const gapM = widestGapM(emitters, open, layout);
  if (gapM > wettedDiameterM + 1e-9) found.push({ code: "circles-do-not-join", gapM, wettedDiameterM });
  const pluggedPerTree = emitters.length - openPerTree;
  if (pluggedPerTree > 0 && !pressureCompensating) found.push({ code: "pressure-rises", pluggedPerTree });
  if (sector !== undefined) {
    const flowLPerH = sector.trees * openPerTree * emitterFlowLPerH;
    const { smallestFlowLPerH } = sector;
    if (flowLPerH < smallestFlowLPerH) found.push({ code: "below-smallest-flow", flowLPerH, smallestFlowLPerH });
  }
  const nearestM = Math.min(...emitters.filter((_, at) => open[at]).map(({ fromTrunkM }) => fromTrunkM));
  if (nearestM <= wettedRadiusM) found.push({ code: "wets-trunk", nearestM });
  return found;
}

/** Widest distance between neighbouring open emitters of one line of one tree; across trees only where none is plugged. */
function widestGapM(emitters: readonly EmitterPlace[], open: readonly boolean[], layout: RowLayout): number {
  const whole = open.every(Boolean);
  let widest = 0;
  for (const offset of layout.offsetsM) {
    const along = emitters.filter((e, at) => open[at] && e.acrossM === offset).map(({ alongM }) => alongM);
    for (let i = 1; i < along.length; i++) widest = Math.max(widest, along[i] - along[i - 1]);
    if (whole) widest = Math.max(widest, layout.treeSpacingM - (along[along.length - 1] - along[0]));
  }
  return widest;
}
