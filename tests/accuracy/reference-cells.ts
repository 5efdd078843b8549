/**
 * Cells of the reference study, worked back from the ponded widths and cell counts it prints, so that the same scheme on the
 * same lanes can be compared without the grid error of either side.
 */
function edges(spans: readonly (readonly [toCm: number, cells: number])[]): number[] {
  const out = [0];
  let from = 0;
  for (const [to, cells] of spans) {
    for (let k = 1; k <= cells; k++) out.push(k === cells ? to : from + ((to - from) * k) / cells);
    from = to;
  }
  return out;
}

/** 53 lanes: line flows other than 3.2 L/h per metre. */
export const stripLanesCm: readonly number[] = edges([
  [4, 4],
  [10, 6],
  [20, 8],
  [30, 6],
  [45, 8],
  [60, 6],
  [100, 8],
  [150, 7],
]);

/** 73 lanes, 1.4 times as many: 3.2 L/h per metre, and the layered ground. */
export const finerStripLanesCm: readonly number[] = edges([
  [4, 6],
  [10, 8],
  [20, 11],
  [30, 8],
  [45, 11],
  [60, 8],
  [100, 11],
  [150, 10],
]);

/** 54 rings. No ring edge lies at 30 cm; the ring centred there is in none of its boxes. */
export const ringLanesCm: readonly number[] = edges([
  [5, 10],
  [10, 9],
  [20, 10],
  [40, 13],
  [60, 8],
  [100, 4],
]);

/** 66 layers to 120 cm. */
export const ringLayersCm: readonly number[] = edges([
  [2, 5],
  [10, 10],
  [20, 10],
  [40, 16],
  [60, 13],
  [120, 12],
]);

/**
 * Where the reference's own cells put the boundary that its layered cases state at 30 cm: its boxes between 20 and 40 cm
 * start at theta 0.205255, which is 10.27 cm of sandy loam at 0.078700 over 9.73 cm of clay at 0.338906.
 */
export const layeredBoundaryCm = 30.27;
