import type { ExpectedUnknown } from "rootledger/calibrate";
import { isSeen } from "./blocks.js";
import type { GrassPlot, PlotHorizon } from "./grass-column.js";
import type { StationRecord } from "./station-record.js";

/**
 * What is fitted: in each horizon saturation, the dry limit and the size of the pores; for the whole profile the spread of
 * pore sizes and the conductivity curve; of the grass its water use in the warm and the cold season, its cover, where
 * its roots are and the tension at which it draws no more. Expected values of the shape are those of the library's loam;
 * saturation is expected a little above the readings of the seen days and the dry limit well below them, for unseen days may be
 * drier. Spreads are our choice, no source.
 */
export function soilUnknowns(record: StationRecord, scored: readonly Uint8Array[]): ExpectedUnknown[] {
  const byHorizon = record.depthsCm.flatMap((depth, k) => {
    const read = Array.from(record.theta[k].filter((_, d) => isSeen(d) && scored[k][d] === 1)).sort((a, b) => a - b);
    const at = (share: number): number => read[Math.floor(share * (read.length - 1))];
    const driest = at(0.01) - 0.09;
    return [
      { name: `saturated${depth}cm`, expected: at(0.99) + 0.02, spread: 0.03 },
      { name: `driest${depth}cm`, expected: driest > 0.005 ? driest : 0.005, spread: 0.05 },
      { name: `poreSize${depth}cm`, expected: 0, spread: 0.5 },
    ];
  });
  return [
    ...byHorizon,
    { name: "lnAlphaPerCm", expected: Math.log(0.08), spread: 0.7 },
    { name: "lnNLess1", expected: Math.log(0.22), spread: 0.5 },
    { name: "lnKSatCmPerH", expected: Math.log(1.5), spread: 1 },
    { name: "lnHalfHeadCm", expected: Math.log(16), spread: 0.3 },
    { name: "exponent", expected: 2.5, spread: 0.5 },
    { name: "kcbWarm", expected: 0.6, spread: 0.2 },
    { name: "kcbCold", expected: 0.25, spread: 0.15 },
    { name: "coverFraction", expected: 0.6, spread: 0.2 },
    { name: "topShareLogit", expected: 1.1, spread: 0.5 },
    { name: "lnDryZeroCm", expected: Math.log(8000), spread: 0.5 },
  ];
}

const within = (low: number, value: number, high: number): number => (value < low ? low : value > high ? high : value);

/** The grass plot that a set of values stands for; values past what a soil can be are held at the edge. */
export function plotOf(record: StationRecord, values: Readonly<Record<string, number>>): GrassPlot {
  const horizons = record.depthsCm.map((depth): PlotHorizon => {
    const thetaResidual = within(0.001, values[`driest${depth}cm`], 0.6);
    return {
      thetaResidual,
      thetaSaturated: within(thetaResidual + 0.03, values[`saturated${depth}cm`], 0.75),
      alphaPerCm: Math.exp(values.lnAlphaPerCm + values[`poreSize${depth}cm`]),
      n: 1 + Math.exp(values.lnNLess1),
      kSatCmPerH: Math.exp(values.lnKSatCmPerH),
      halfHeadCm: Math.exp(values.lnHalfHeadCm),
      exponent: within(1.2, values.exponent, 6),
    };
  });
  return {
    horizons,
    kcb: kcbByTemperature(record.airTempC, within(0.02, values.kcbCold, 1.2), within(0.05, values.kcbWarm, 1.2)),
    coverFraction: within(0, values.coverFraction, 0.98),
    topShare: 1 / (1 + Math.exp(-values.topShareLogit)),
    dryZeroHeadCm: -within(1000, Math.exp(values.lnDryZeroCm), 1e5),
  };
}

/** Grass hardly grows below about 5 C and fully above about 15 C (common practice, no source), by the mean of the last 30 days. */
const growth = { nothingC: 5, fullC: 15, days: 30 };

function kcbByTemperature(airTempC: Float64Array, cold: number, warm: number): Float64Array {
  return airTempC.map((_, d) => {
    const last = airTempC.slice(Math.max(0, d - growth.days + 1), d + 1).filter((t) => !Number.isNaN(t));
    const mean = last.reduce((sum, t) => sum + t, 0) / last.length;
    return cold + (warm - cold) * within(0, (mean - growth.nothingC) / (growth.fullC - growth.nothingC), 1);
  });
}
