import type { PlugWarning } from "rootledger/lines";
import { amount, percent } from "../number-format.js";
import { unitText, waterText } from "../quantity.js";

/** Words of the block's page and of the plan of the row. */
export const blockPage = {
  title: (open: number, all: number, useful: number | undefined): string =>
    useful === undefined
      ? `${amount(open)} of ${amount(all)} emitters open; a mature tree's roots follow the lines`
      : `${amount(open)} of ${amount(all)} emitters open; ${percent(useful)} of the water falls on roots`,
  planLabel: "The row from above: one tree's emitters",
  planKeys: "Tap an emitter to open or plug it. By keyboard: arrows go from one to the next, space opens or plugs.",
  countOnly:
    "What is computed below ground takes how many emitters are open, not which: along the lines their water is spread evenly, far apart each has its own circle. A line plugged whole is left out if the open lines still mirror each other across the row.",
  thenRuns: (sameLitres: boolean): string =>
    sameLitres
      ? "The programme's litres stay, so it runs longer."
      : "The programme's minutes stay, so the tree is given fewer litres.",
  emitter: (alongM: number, acrossM: number, open: boolean): string =>
    `${open ? "open" : "plugged"}, ${amount(Math.abs(alongM), 2)} m ${alongM < 0 ? "before" : "after"} the trunk, ${acrossM === 0 ? "on the row" : `${amount(Math.abs(acrossM), 2)} m ${acrossM < 0 ? "left" : "right"} of it`}`,
  waterEc: (): string => `Salt of the water (EC), ${unitText("salt")}; 0: not reckoned`,
  saltNote: "What becomes of it in the root zone (ECe) is drawn further down each soil on the page Compare.",
  openAll: "Open all",
  openNearest: (count: number): string => `Open the nearest ${amount(count)}`,
  openOnRoots: "Open those over roots",
  lastOne: "One emitter must stay open.",
  key: { roots: "roots", wet: "wetted ground", canopy: "canopy", open: "open", plugged: "plugged" },
  litres: (programme: string, litres: string): string => `${programme} gives a tree ${litres} a day`,
  onRoots: (litres: string): string => `${litres} on roots`,
  onNothing: (litres: string): string => `${litres} on nothing`,
  need: "Litres that the roots need a day",
  goesOut: (need: number, out: number): string =>
    `To bring the roots ${waterText(need)}, the emitters must give ${waterText(out)}.`,
  flow: (litresPerH: number, mmPerH: number): string =>
    `${waterText(litresPerH)}/h a tree, ${amount(mmPerH, 2)} mm/h on the wetted ground.`,
  wetted: (share: number): string => `${percent(share)} of the tree's ground is wetted.`,
  sectorFlow: (now: number, all: number): string =>
    `The sector takes ${waterText(now)}/h instead of ${waterText(all)}/h.`,
  warning: (warning: PlugWarning): string => {
    switch (warning.code) {
      case "circles-do-not-join":
        return `Dry ground between emitters: they stand ${amount(warning.gapM, 2)} m apart and wet ${amount(warning.wettedDiameterM, 2)} m.`;
      case "below-smallest-flow":
        return `Pump or filter gets too little: ${waterText(warning.flowLPerH)}/h, the smallest flow is ${waterText(warning.smallestFlowLPerH)}/h.`;
      case "pressure-rises":
        return "Emitters that do not compensate give more each when others are plugged: measure before you trust these litres.";
      case "wets-trunk":
        return `An emitter wets the trunk: the nearest stands ${amount(warning.nearestM, 2)} m from it.`;
    }
  },
  heading: { trees: "Trees", lines: "Lines", roots: "Roots", soil: "Soils", valve: "Behind the valve", water: "Water" },
  treeSpacing: "Tree to tree, m",
  rowSpacing: "Row to row, m",
  canopy: "Canopy across, m",
  lines: "Lines per row",
  lineDistance: "Line to line, m",
  emitterSpacing: "Emitter to emitter, m",
  flowLabel: (): string => `Emitter flow, ${unitText("water")}/h`,
  wettedRadius: "One emitter wets to, m",
  drains: "Lines drain to the low end after every closing",
  drainsNote: "Then the tree at the low end receives what runs out; choose it on the page Compare.",
  rootKind: "Roots",
  rootKinds: { mature: "of a mature tree, along the lines", disc: "of a young tree, a disc" },
  rootRadius: "Roots reach, m",
  rootDepth: "Roots go down to, cm",
  sectorTrees: "Trees on the valve (0: unknown)",
  smallestFlow: (): string => `Smallest flow of pump and filter, ${unitText("water")}/h`,
  compensating: "Emitters compensate pressure",
  soilLabel: (n: number): string => `Soil ${n}`,
  cannot: "This layout has no emitter for every tree.",
};

export type BlockPageWords = typeof blockPage;
