/** Emitters round a tree, and how wide one wets. */
export interface WettingLayout {
  readonly emittersPerTree: number;
  /** Along the line. */
  readonly emitterSpacingM: number;
  /** Diameter that one emitter wets at the depth of interest. */
  readonly wettedWidthM: number;
  readonly treeSpacingM: number;
  readonly rowSpacingM: number;
}

/** `two-lines` lie a joining spacing apart. */
export type WettedLines = "single-line" | "two-lines";

/** Emitters this share of the wetted width apart wet one strip. Source: Keller & Bliesner (1990), Se' = 0.8 w (from memory). */
const joinedShare = 0.8;

/** Widest spacing at which wetted bodies join into a strip, m. Source: Keller & Bliesner (1990), from memory. @example joiningSpacingM(1.2) // 0.96 */
export const joiningSpacingM = (wettedWidthM: number): number => joinedShare * wettedWidthM;

/**
 * Share of the ground that a layout wets, at most all of it. One straight line: e Se w / (Sp Sr). Two lines Se' apart: e Se (Se' + w) / (2 Sp Sr).
 * Se' = 0.8 w, and Se counts up to Se'. Source: Keller & Bliesner (1990), Sprinkle and trickle irrigation; NEH 623 ch. 7 (from memory).
 *
 * @throws RangeError if a length or the number of emitters is not above 0.
 * @example wettedShare("single-line", { emittersPerTree: 4, emitterSpacingM: 0.9, wettedWidthM: 1.2, treeSpacingM: 4, rowSpacingM: 6 }) // 0.18
 */
export function wettedShare(lines: WettedLines, layout: WettingLayout): number {
  const share = layout.emittersPerTree * shareOfOneEmitter(lines, layout);
  requireAbove0("emittersPerTree", layout.emittersPerTree);
  return share < 1 ? share : 1;
}

/**
 * Emitters that a tree needs for a wetted share, as an exact number; buy the next whole one.
 *
 * @throws RangeError if the share is not above 0 and at most 1, or a length is not above 0.
 * @example emittersForShare(0.35, "two-lines", { emitterSpacingM: 0.96, wettedWidthM: 1.2, treeSpacingM: 4, rowSpacingM: 6 }) // 8.10
 */
export function emittersForShare(
  share: number,
  lines: WettedLines,
  layout: Omit<WettingLayout, "emittersPerTree">,
): number {
  if (!(share > 0 && share <= 1)) throw new RangeError(`emittersForShare requires a share above 0 to 1: got ${share}`);
  return share / shareOfOneEmitter(lines, layout);
}

function shareOfOneEmitter(lines: WettedLines, layout: Omit<WettingLayout, "emittersPerTree">): number {
  const { emitterSpacingM, wettedWidthM, treeSpacingM, rowSpacingM } = layout;
  requireAbove0("emitterSpacingM", emitterSpacingM);
  requireAbove0("wettedWidthM", wettedWidthM);
  requireAbove0("treeSpacingM", treeSpacingM);
  requireAbove0("rowSpacingM", rowSpacingM);
  const joiningM = joiningSpacingM(wettedWidthM);
  const alongM = emitterSpacingM < joiningM ? emitterSpacingM : joiningM;
  const acrossM = lines === "single-line" ? wettedWidthM : (joiningM + wettedWidthM) / 2;
  return (alongM * acrossM) / (treeSpacingM * rowSpacingM);
}

function requireAbove0(name: string, value: number): void {
  if (!(value > 0)) throw new RangeError(`a wetted share requires ${name} above 0: got ${value}`);
}
