/** A layout that a published trial used. */
export interface PublishedLayout {
  readonly name: string;
  readonly linesPerRow: number;
  readonly emitterFlowLPerH: number;
  readonly emitterSpacingM?: number;
  readonly source: string;
}

/**
 * Layouts of published trials, a place to start from, no advice: in that trial the number of emitters or lines at the same
 * water made little difference.
 */
export const publishedLayouts: readonly PublishedLayout[] = [
  {
    name: "single line, larger emitters far apart",
    linesPerRow: 1,
    emitterFlowLPerH: 3.5,
    emitterSpacingM: 1.2,
    source: "Parra et al. (2021), Water 13:1795, lemon and persimmon",
  },
  {
    name: "double line, smaller emitters",
    linesPerRow: 2,
    emitterFlowLPerH: 2.2,
    source: "Parra et al. (2021), Water 13:1795, lemon and persimmon; 5 to 8 emitters a tree",
  },
];
