import type { Section } from "./result.js";

/** From and to, cm; the last band has no end. */
export type Band = readonly [number, number];

/** Bands from the surface, or the line, outward, the last one without end. @example bandsOf([10, 20]).length // 3 */
export const bandsOf = (ends: readonly number[]): readonly Band[] =>
  [...ends, Number.POSITIVE_INFINITY].map((to, i): Band => [i === 0 ? 0 : ends[i - 1], to]);

/** Share of [from, to] that lies in a band. @example bandOverlap([10, 20], 0, 40) // 0.25 */
export function bandOverlap([start, end]: Band, from: number, to: number): number {
  const length = (to < end ? to : end) - (from > start ? from : start);
  return length > 0 ? length / (to - from) : 0;
}

const slices = 64;

/** Share of each lane whose distance from the nearest line lies in a band, on 64 slices of its width. @example laneShares(section, [0, 20])[0] */
export function laneShares(section: Section, [from, to]: Band): number[] {
  const { lanes, laneEdgesCm, lineAtCm, geometry } = section;
  return Array.from({ length: lanes }, (_, j) => {
    const inner = laneEdgesCm[j];
    const outer = laneEdgesCm[j + 1];
    let within = 0;
    let whole = 0;
    for (let k = 0; k < slices; k++) {
      const x = inner + ((k + 0.5) / slices) * (outer - inner);
      const area = geometry === "ring" ? x : 1;
      let nearest = Number.POSITIVE_INFINITY;
      for (const line of lineAtCm) {
        const mirrored = geometry === "ring" ? Number.POSITIVE_INFINITY : x + line;
        nearest = Math.min(nearest, Math.abs(x - line), mirrored);
      }
      whole += area;
      if (nearest >= from && nearest < to) within += area;
    }
    return within / whole;
  });
}

/** @throws RangeError if the ends of bands do not rise from above 0. */
export function requireBands(caller: string, name: string, ends: readonly number[]): void {
  ends.forEach((end, i) => {
    if (!(end > (i === 0 ? 0 : ends[i - 1])))
      throw new RangeError(`${caller} requires rising ${name} above 0: got ${ends.join(", ")}`);
  });
}
