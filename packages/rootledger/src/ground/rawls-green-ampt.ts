import type { TextureClass } from "./texture.js";
import type { Verified } from "./verified.js";

/** Parameters of the Green & Ampt infiltration equation. */
export interface GreenAmptRow {
  readonly porosity: number;
  readonly effectivePorosity: number;
  /** Suction at the wetting front, cm. */
  readonly frontSuctionCm: number;
  readonly conductivityCmPerH: number;
  readonly verified: Verified;
}

/**
 * Eleven classes; the paper has no silt. Rows from memory, their suctions seen in a secondary table for ten of the classes. `conductivityCmPerH` is half of the saturated value, as the paper uses it.
 */
export const rawlsGreenAmptSource = "Rawls, Brakensiek & Miller (1983), J. Hydraul. Eng. 109:62-70, table 1";

/** Green-Ampt parameters by texture class. */
export const rawlsGreenAmpt: Readonly<Record<Exclude<TextureClass, "silt">, GreenAmptRow>> = {
  sand: {
    porosity: 0.437,
    effectivePorosity: 0.417,
    frontSuctionCm: 4.95,
    conductivityCmPerH: 11.78,
    verified: "memory",
  },
  "loamy sand": {
    porosity: 0.437,
    effectivePorosity: 0.401,
    frontSuctionCm: 6.13,
    conductivityCmPerH: 2.99,
    verified: "memory",
  },
  "sandy loam": {
    porosity: 0.453,
    effectivePorosity: 0.412,
    frontSuctionCm: 11.01,
    conductivityCmPerH: 1.09,
    verified: "memory",
  },
  loam: {
    porosity: 0.463,
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a printed porosity that happens to resemble log10(e).
    effectivePorosity: 0.434,
    frontSuctionCm: 8.89,
    conductivityCmPerH: 0.34,
    verified: "memory",
  },
  "silt loam": {
    porosity: 0.501,
    effectivePorosity: 0.486,
    frontSuctionCm: 16.68,
    conductivityCmPerH: 0.65,
    verified: "memory",
  },
  "sandy clay loam": {
    porosity: 0.398,
    effectivePorosity: 0.33,
    frontSuctionCm: 21.85,
    conductivityCmPerH: 0.15,
    verified: "memory",
  },
  "clay loam": {
    porosity: 0.464,
    effectivePorosity: 0.309,
    frontSuctionCm: 20.88,
    conductivityCmPerH: 0.1,
    verified: "memory",
  },
  "silty clay loam": {
    porosity: 0.471,
    effectivePorosity: 0.432,
    frontSuctionCm: 27.3,
    conductivityCmPerH: 0.1,
    verified: "memory",
  },
  "sandy clay": {
    porosity: 0.43,
    effectivePorosity: 0.321,
    frontSuctionCm: 23.9,
    conductivityCmPerH: 0.06,
    verified: "memory",
  },
  "silty clay": {
    porosity: 0.479,
    effectivePorosity: 0.423,
    frontSuctionCm: 29.22,
    conductivityCmPerH: 0.05,
    verified: "memory",
  },
  clay: {
    porosity: 0.475,
    effectivePorosity: 0.385,
    frontSuctionCm: 31.63,
    conductivityCmPerH: 0.03,
    verified: "memory",
  },
};
