import { campbellCurve } from "./brooks-corey.js";
import type { SoilCurve } from "./curve.js";
import type { TextureClass } from "./texture.js";
import type { Verified } from "./verified.js";

/** One printed row; conductivity as printed, cm/min. */
export interface ClappHornbergerRow {
  readonly b: number;
  readonly airEntryCm: number;
  readonly thetaSaturated: number;
  readonly kSatCmPerMin: number;
  readonly verified: Verified;
}

/** Where the class means come from. */
export const clappHornbergerSource = "Clapp & Hornberger (1978), WRR 14:601-604, table 2";

/** Eleven classes; the paper has no silt. */
export const clappHornberger: Readonly<Record<Exclude<TextureClass, "silt">, ClappHornbergerRow>> = {
  sand: { b: 4.05, airEntryCm: 12.1, thetaSaturated: 0.395, kSatCmPerMin: 1.056, verified: "memory" },
  "loamy sand": { b: 4.38, airEntryCm: 9, thetaSaturated: 0.41, kSatCmPerMin: 0.938, verified: "memory" },
  "sandy loam": { b: 4.9, airEntryCm: 21.8, thetaSaturated: 0.435, kSatCmPerMin: 0.208, verified: "memory" },
  loam: { b: 5.39, airEntryCm: 47.8, thetaSaturated: 0.451, kSatCmPerMin: 0.0417, verified: "memory" },
  "silt loam": { b: 5.3, airEntryCm: 78.6, thetaSaturated: 0.485, kSatCmPerMin: 0.0432, verified: "memory" },
  "sandy clay loam": { b: 7.12, airEntryCm: 29.9, thetaSaturated: 0.42, kSatCmPerMin: 0.0378, verified: "memory" },
  "clay loam": { b: 8.52, airEntryCm: 63, thetaSaturated: 0.476, kSatCmPerMin: 0.0147, verified: "memory" },
  "silty clay loam": { b: 7.75, airEntryCm: 35.6, thetaSaturated: 0.477, kSatCmPerMin: 0.0102, verified: "memory" },
  "sandy clay": { b: 10.4, airEntryCm: 15.3, thetaSaturated: 0.426, kSatCmPerMin: 0.013, verified: "memory" },
  "silty clay": { b: 10.4, airEntryCm: 49, thetaSaturated: 0.492, kSatCmPerMin: 0.0062, verified: "memory" },
  clay: { b: 11.4, airEntryCm: 40.5, thetaSaturated: 0.482, kSatCmPerMin: 0.0077, verified: "memory" },
};

/** Power-law curve of a class. @example clappHornbergerCurve("sand").thetaAt(-336.6) // 0.1738 */
export function clappHornbergerCurve(textureClass: Exclude<TextureClass, "silt">): SoilCurve {
  const { b, airEntryCm, thetaSaturated, kSatCmPerMin } = clappHornberger[textureClass];
  return campbellCurve(
    textureClass,
    { b, airEntryCm, thetaSaturated, kSatCmPerH: 60 * kSatCmPerMin },
    clappHornbergerSource,
  );
}
