import type { GardnerCurveParameters } from "./gardner-curve.js";
import type { TextureClass } from "./texture.js";

/*
 * Written by fit/main.ts from the facts in fit/facts.ts; what it misses is in fit/RESIDUALS.md. Do not edit by hand.
 */

/** What the class curves were fitted to. */
export const defaultClassSource =
  "own fit to Agriculture Victoria (readily available water, table 1), Saxton & Rawls (2006) and FAO Irrigation Water Management Training Manual 5";

/** The default curve of every texture class. */
export const defaultClasses: Readonly<Record<TextureClass, GardnerCurveParameters>> = {
  sand: {
    thetaResidual: 0.04438,
    thetaSaturated: 0.4617,
    alphaPerCm: 0.152,
    n: 1.768,
    kSatCmPerH: 10,
    halfHeadCm: 14.97,
    exponent: 4,
  },
  "loamy sand": {
    thetaResidual: 0.04396,
    thetaSaturated: 0.4602,
    alphaPerCm: 0.1322,
    n: 1.622,
    kSatCmPerH: 5.5,
    halfHeadCm: 17.38,
    exponent: 3.818,
  },
  "sandy loam": {
    thetaResidual: 0.06651,
    thetaSaturated: 0.4499,
    alphaPerCm: 0.1286,
    n: 1.438,
    kSatCmPerH: 2.8,
    halfHeadCm: 17.51,
    exponent: 3.271,
  },
  loam: {
    thetaResidual: 0.06475,
    thetaSaturated: 0.4595,
    alphaPerCm: 0.1154,
    n: 1.225,
    kSatCmPerH: 1.5,
    halfHeadCm: 15.44,
    exponent: 2.58,
  },
  "silt loam": {
    thetaResidual: 0.03035,
    thetaSaturated: 0.4787,
    alphaPerCm: 0.09103,
    n: 1.234,
    kSatCmPerH: 1.6,
    halfHeadCm: 14.32,
    exponent: 2.337,
  },
  silt: {
    thetaResidual: 0.01054,
    thetaSaturated: 0.479,
    alphaPerCm: 0.06334,
    n: 1.32,
    kSatCmPerH: 1.8,
    halfHeadCm: 14.43,
    exponent: 2.227,
  },
  "sandy clay loam": {
    thetaResidual: 0.09514,
    thetaSaturated: 0.4341,
    alphaPerCm: 0.06508,
    n: 1.225,
    kSatCmPerH: 1.1,
    halfHeadCm: 17.71,
    exponent: 2.748,
  },
  "clay loam": {
    thetaResidual: 0.0661,
    thetaSaturated: 0.4772,
    alphaPerCm: 0.08073,
    n: 1.137,
    kSatCmPerH: 0.7,
    halfHeadCm: 16.54,
    exponent: 2.277,
  },
  "silty clay loam": {
    thetaResidual: 0.05426,
    thetaSaturated: 0.5112,
    alphaPerCm: 0.07915,
    n: 1.144,
    kSatCmPerH: 0.6,
    halfHeadCm: 18.18,
    exponent: 2.092,
  },
  "sandy clay": {
    thetaResidual: 0.178,
    thetaSaturated: 0.4438,
    alphaPerCm: 0.02502,
    n: 1.226,
    kSatCmPerH: 0.35,
    halfHeadCm: 21.54,
    exponent: 2.398,
  },
  "silty clay": {
    thetaResidual: 0.06636,
    thetaSaturated: 0.5235,
    alphaPerCm: 0.07108,
    n: 1.115,
    kSatCmPerH: 0.37,
    halfHeadCm: 21.94,
    exponent: 2.068,
  },
  clay: {
    thetaResidual: 0.2025,
    thetaSaturated: 0.4984,
    alphaPerCm: 0.02433,
    n: 1.193,
    kSatCmPerH: 0.25,
    halfHeadCm: 23.54,
    exponent: 2.147,
  },
};
