import type { SoilCurve } from "./curve.js";
import type { TextureClass } from "./texture.js";
import { type NearSaturation, type VanGenuchten, vanGenuchtenCurve } from "./van-genuchten.js";
import type { Verified } from "./verified.js";

/** One printed row; conductivity as printed, cm/d. */
export interface CarselParrishRow {
  readonly thetaResidual: number;
  readonly thetaSaturated: number;
  readonly alphaPerCm: number;
  readonly n: number;
  readonly kSatCmPerD: number;
  readonly verified: Verified;
}

/** Where the class means come from. */
export const carselParrishSource = "Carsel & Parrish (1988), WRR 24:755-769, class means (tables 1, 3, 5, 6)";

/** Class means. kSat is not in order of texture: clay 4.80, silty clay 0.48 cm/d. */
export const carselParrish: Readonly<Record<TextureClass, CarselParrishRow>> = {
  sand: {
    thetaResidual: 0.045,
    thetaSaturated: 0.43,
    alphaPerCm: 0.145,
    n: 2.68,
    kSatCmPerD: 712.8,
    verified: "memory",
  },
  "loamy sand": {
    thetaResidual: 0.057,
    thetaSaturated: 0.41,
    alphaPerCm: 0.124,
    n: 2.28,
    kSatCmPerD: 350.2,
    verified: "memory",
  },
  "sandy loam": {
    thetaResidual: 0.065,
    thetaSaturated: 0.41,
    alphaPerCm: 0.075,
    n: 1.89,
    kSatCmPerD: 106.1,
    verified: "memory",
  },
  loam: {
    thetaResidual: 0.078,
    thetaSaturated: 0.43,
    alphaPerCm: 0.036,
    n: 1.56,
    kSatCmPerD: 24.96,
    verified: "memory",
  },
  "silt loam": {
    thetaResidual: 0.067,
    thetaSaturated: 0.45,
    alphaPerCm: 0.02,
    n: 1.41,
    kSatCmPerD: 10.8,
    verified: "memory",
  },
  silt: { thetaResidual: 0.034, thetaSaturated: 0.46, alphaPerCm: 0.016, n: 1.37, kSatCmPerD: 6, verified: "memory" },
  "sandy clay loam": {
    thetaResidual: 0.1,
    thetaSaturated: 0.39,
    alphaPerCm: 0.059,
    n: 1.48,
    kSatCmPerD: 31.44,
    verified: "memory",
  },
  "clay loam": {
    thetaResidual: 0.095,
    thetaSaturated: 0.41,
    alphaPerCm: 0.019,
    n: 1.31,
    kSatCmPerD: 6.24,
    verified: "memory",
  },
  "silty clay loam": {
    thetaResidual: 0.089,
    thetaSaturated: 0.43,
    alphaPerCm: 0.01,
    n: 1.23,
    kSatCmPerD: 1.68,
    verified: "memory",
  },
  "sandy clay": {
    thetaResidual: 0.1,
    thetaSaturated: 0.38,
    alphaPerCm: 0.027,
    n: 1.23,
    kSatCmPerD: 2.88,
    verified: "memory",
  },
  "silty clay": {
    thetaResidual: 0.07,
    thetaSaturated: 0.36,
    alphaPerCm: 0.005,
    n: 1.09,
    kSatCmPerD: 0.48,
    verified: "memory",
  },
  clay: { thetaResidual: 0.068, thetaSaturated: 0.38, alphaPerCm: 0.008, n: 1.09, kSatCmPerD: 4.8, verified: "memory" },
};

/** A row in the units of the model. @example carselParrishParameters("loam").kSatCmPerH // 1.04 */
export function carselParrishParameters(textureClass: TextureClass): VanGenuchten {
  const { thetaResidual, thetaSaturated, alphaPerCm, n, kSatCmPerD } = carselParrish[textureClass];
  return { thetaResidual, thetaSaturated, alphaPerCm, n, kSatCmPerH: kSatCmPerD / 24 };
}

/** Van Genuchten-Mualem curve of a class. @example carselParrishCurve("loam").thetaAt(-100) // 0.2421 */
export const carselParrishCurve = (textureClass: TextureClass, nearSaturation: NearSaturation = "linear"): SoilCurve =>
  vanGenuchtenCurve(textureClass, carselParrishParameters(textureClass), carselParrishSource, nearSaturation);
