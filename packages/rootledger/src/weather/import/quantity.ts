import { columnLimits } from "../column-limits.js";
import type { WeatherColumn } from "../daily-weather.js";

export type Dimension =
  | "temperature"
  | "humidity"
  | "moisture"
  | "speed"
  | "angle"
  | "radiation"
  | "duration"
  | "depth"
  | "pressure"
  | "volume";

/** What a column may hold. */
export interface Quantity {
  readonly dimension: Dimension;
  /** What one record can be, in the quantity's own unit, both ends included. */
  readonly lowest: number;
  readonly highest: number;
  /** Measured in the soil, so that a column may have a depth. */
  readonly soil: boolean;
  /** How records become a day's figure. */
  readonly ofDay: "mean" | "sum" | "lowest" | "highest";
}

/** The columns of the plain daily file, and what only station and sensor files hold. */
export type QuantityName =
  | WeatherColumn
  | "tMeanC"
  | "vapourPressureKPa"
  | "gustMPerS"
  | "windDirectionDeg"
  | "pressureKPa"
  | "soilTempC"
  | "soilMoistureM3PerM3"
  | "soilTensionKPa"
  | "irrigationMm"
  | "irrigationM3";

const quantity = (
  dimension: Dimension,
  [lowest, highest]: readonly [number, number],
  ofDay: Quantity["ofDay"],
  soil = false,
): Quantity => ({ dimension, lowest, highest, soil, ofDay });

const daily = (name: keyof typeof columnLimits): readonly [number, number] => [
  columnLimits[name].lowest,
  columnLimits[name].highest,
];

/**
 * What a station or sensor file may hold, by the name under which it is kept; the unit is the end of the name. Limits of the daily columns
 * are those of the plain daily file. The others, own choice: gusts to the WMO record of 113 m/s (Barrow Island 1996); air pressure
 * from above the highest orchard to the record 1085 hPa; a mineral soil holds water between residual and saturation, so 0 is a
 * broken sensor; tension to the wilting point of 1500 kPa and beyond for dry sensors. Frozen or sun-baked soil -40 to 75 C.
 */
export const quantities: Readonly<Record<QuantityName, Quantity>> = {
  tMeanC: quantity("temperature", daily("tMaxC"), "mean"),
  tMinC: quantity("temperature", daily("tMinC"), "lowest"),
  tMaxC: quantity("temperature", daily("tMaxC"), "highest"),
  rhMeanPct: quantity("humidity", daily("rhMeanPct"), "mean"),
  rhMinPct: quantity("humidity", daily("rhMinPct"), "lowest"),
  rhMaxPct: quantity("humidity", daily("rhMaxPct"), "highest"),
  dewPointC: quantity("temperature", daily("dewPointC"), "mean"),
  vapourPressureKPa: quantity("pressure", [0, 8], "mean"),
  windMPerS: quantity("speed", daily("windMPerS"), "mean"),
  gustMPerS: quantity("speed", [0, 115], "highest"),
  windDirectionDeg: quantity("angle", [0, 360], "mean"),
  solarMJPerM2: quantity("radiation", daily("solarMJPerM2"), "sum"),
  sunshineH: quantity("duration", daily("sunshineH"), "sum"),
  rainMm: quantity("depth", daily("rainMm"), "sum"),
  panMm: quantity("depth", daily("panMm"), "sum"),
  et0Mm: quantity("depth", daily("et0Mm"), "sum"),
  pressureKPa: quantity("pressure", [40, 109], "mean"),
  soilTempC: quantity("temperature", [-40, 75], "mean", true),
  soilMoistureM3PerM3: quantity("moisture", [0.001, 0.9], "mean", true),
  soilTensionKPa: quantity("pressure", [0, 5000], "mean", true),
  irrigationMm: quantity("depth", [0, 500], "sum"),
  irrigationM3: quantity("volume", [0, 1e7], "sum"),
};

/** @example isQuantityName("rainMm") // true */
export const isQuantityName = (name: string): name is QuantityName => Object.hasOwn(quantities, name);
