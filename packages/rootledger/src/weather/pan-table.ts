/**
 * Pan coefficients of the Class A pan. Source: FAO-56 table 5, from memory except the five cells that tests check against
 * print. `green` is case A, `dry` case B. Rows: wind at 2 m below 2, 2-5, 5-8, above 8 m/s; within them fetch 1, 10, 100, 1000 m; columns:
 * mean relative humidity below 40, 40-70, above 70 %.
 */
export const panTable: Readonly<Record<"green" | "dry", readonly (readonly (readonly number[])[])[]>> = {
  green: [
    [
      [0.55, 0.65, 0.75],
      [0.65, 0.75, 0.85],
      [0.7, 0.8, 0.85],
      [0.75, 0.85, 0.85],
    ],
    [
      [0.5, 0.6, 0.65],
      [0.6, 0.7, 0.75],
      [0.65, 0.75, 0.8],
      [0.7, 0.8, 0.8],
    ],
    [
      [0.45, 0.5, 0.6],
      [0.55, 0.6, 0.65],
      [0.6, 0.65, 0.7],
      [0.65, 0.7, 0.75],
    ],
    [
      [0.4, 0.45, 0.5],
      [0.45, 0.55, 0.6],
      [0.5, 0.6, 0.65],
      [0.55, 0.6, 0.65],
    ],
  ],
  dry: [
    [
      [0.7, 0.8, 0.85],
      [0.6, 0.7, 0.8],
      [0.55, 0.65, 0.75],
      [0.5, 0.6, 0.7],
    ],
    [
      [0.65, 0.75, 0.8],
      [0.55, 0.65, 0.7],
      [0.5, 0.6, 0.65],
      [0.45, 0.55, 0.6],
    ],
    [
      [0.6, 0.65, 0.7],
      [0.5, 0.55, 0.65],
      [0.45, 0.5, 0.6],
      [0.4, 0.45, 0.55],
    ],
    [
      [0.5, 0.6, 0.65],
      [0.45, 0.5, 0.55],
      [0.4, 0.45, 0.5],
      [0.35, 0.4, 0.45],
    ],
  ],
};

/** Fetches of the printed table, m. */
export const panFetchesM: readonly number[] = [1, 10, 100, 1000];
