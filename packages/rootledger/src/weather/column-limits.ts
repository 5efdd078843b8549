import type { WeatherColumn } from "./daily-weather.js";
import type { WeatherFaultCode } from "./weather-fault.js";

/** What a value may be. */
export interface ColumnLimits {
  readonly lowest: number;
  readonly highest: number;
  readonly rule: string;
  readonly below: WeatherFaultCode;
  readonly above: WeatherFaultCode;
}

const limits = (
  lowest: number,
  highest: number,
  rule: string,
  below: WeatherFaultCode = "impossible-value",
  above: WeatherFaultCode = "impossible-value",
): ColumnLimits => ({ lowest, highest, rule, below, above });

/**
 * What a daily value can be; beyond it the cell is a fault, both ends included in what is allowed.
 * Temperature: WMO world record low -89.2 C (Vostok 1983); the upper limits, which catch Fahrenheit, are ours: record daily
 * maxima end at 54-57 C. Humidity: sensors drift a few percent over 100 in fog, more than 110 is broken. Sun: above 50 there
 * is more than reaches the top of the atmosphere on any day anywhere (largest daily extraterrestrial radiation 48 MJ/m2).
 * Rain: the WMO world record is 1825 mm in 24 h (Foc-Foc 1966), but where trees are watered a day above 500 mm is a wrong unit;
 * own choice. Dew point: record 35 C (Dhahran 2003), from memory. Wind, pan and ET0: own arithmetic; 48 MJ/m2 would evaporate
 * 20 mm, dry wind may double that from a pan.
 */
export const columnLimits: Readonly<Record<WeatherColumn, ColumnLimits>> = {
  tMinC: limits(
    -90,
    40,
    "must be -90 to 40 degrees Celsius; Fahrenheit is not read",
    "impossible-value",
    "looks-like-fahrenheit",
  ),
  tMaxC: limits(
    -90,
    55,
    "must be -90 to 55 degrees Celsius; Fahrenheit is not read",
    "impossible-value",
    "looks-like-fahrenheit",
  ),
  rhMinPct: limits(0, 110, "must be 0 to 100 percent; up to 110 is read as 100 and noted"),
  rhMaxPct: limits(0, 110, "must be 0 to 100 percent; up to 110 is read as 100 and noted"),
  rhMeanPct: limits(0, 110, "must be 0 to 100 percent; up to 110 is read as 100 and noted"),
  dewPointC: limits(
    -95,
    40,
    "must be -95 to 40 degrees Celsius; Fahrenheit is not read",
    "impossible-value",
    "looks-like-fahrenheit",
  ),
  windMPerS: limits(0, 60, "must be 0 to 60 m/s, the mean of the day"),
  solarMJPerM2: limits(0, 50, "must be 0 to 50 MJ/m2 per day; a mean in W/m2 is multiplied by 0.0864 first"),
  sunshineH: limits(0, 24, "must be 0 to 24 hours"),
  rainMm: limits(0, 500, "must be 0 to 500 mm in a day; check the unit", "negative-rain"),
  panMm: limits(0, 40, "must be 0 to 40 mm in a day"),
  et0Mm: limits(0, 25, "must be 0 to 25 mm in a day"),
};
