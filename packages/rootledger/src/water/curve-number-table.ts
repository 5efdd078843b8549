/** Curve numbers that belong together: the soil dry, as usual and wet before the storm. */
export interface CurveNumberRow {
  readonly usual: number;
  readonly dry: number;
  readonly wet: number;
  readonly verified: "seen" | "memory";
}

const row = (usual: number, dry: number, wet: number, verified: "seen" | "memory"): CurveNumberRow => ({
  usual,
  dry,
  wet,
  verified,
});

/**
 * USDA-NRCS (2004), National Engineering Handbook 630, table 10-1, every fifth row. The tens were seen in a reprint (Beven,
 * Rainfall-Runoff Modelling), the fives are from memory.
 */
export const curveNumberRows: readonly CurveNumberRow[] = [
  row(30, 15, 50, "seen"),
  row(35, 18, 55, "memory"),
  row(40, 22, 60, "seen"),
  row(45, 26, 65, "memory"),
  row(50, 31, 70, "seen"),
  row(55, 35, 74, "memory"),
  row(60, 40, 78, "seen"),
  row(65, 45, 82, "memory"),
  row(70, 51, 85, "seen"),
  row(75, 57, 88, "memory"),
  row(80, 63, 91, "seen"),
  row(85, 70, 94, "memory"),
  row(90, 78, 96, "seen"),
  row(95, 87, 98, "memory"),
  row(100, 100, 100, "seen"),
];
