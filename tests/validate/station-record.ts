import { readFileSync } from "node:fs";
import { dailyEt0, parseDailyWeather } from "rootledger/weather";
import type { Station } from "./stations.js";

/** One station's days: what the probes read, and the weather that acted. Missing readings are NaN. */
export interface StationRecord {
  readonly startDate: string;
  readonly days: number;
  readonly depthsCm: readonly number[];
  /** Volumetric water content, m3/m3, mean of the day: theta[depth][day]. */
  readonly theta: readonly Float64Array[];
  readonly soilTemp5C: Float64Array;
  /** 0 where the gauge gave nothing. */
  readonly rainMm: Float64Array;
  /** 1 where the gauge gave nothing. */
  readonly rainMissing: Uint8Array;
  readonly airTempC: Float64Array;
  readonly et0Mm: Float64Array;
  readonly sunriseH: Float64Array;
  readonly sunsetH: Float64Array;
}

/** A depth with readings on fewer of the days says too little to be fitted or scored; our choice, no source. */
const leastShareOfDays = 0.6;
const longestGapDays = 15;

const data = new URL("../../data/", import.meta.url);
const rowsOf = (path: string): string[][] =>
  readFileSync(new URL(path, data), "utf8")
    .trim()
    .split("\n")
    .map((line) => line.split(","));

/** Soil moisture and weather of a station. ET0 is the library's, by FAO-56 Penman-Monteith from the station's own weather. */
export function stationRecord(station: Station): StationRecord {
  const [names, ...rows] = rowsOf(`soil-moisture/${station.record}.csv`);
  const days = rows.length;
  const column = (name: string): Float64Array => {
    const at = names.indexOf(name);
    return Float64Array.from(rows, (row) => (row[at] === "" ? Number.NaN : Number(row[at])));
  };
  const probes = names
    .filter((name) => name.startsWith("theta"))
    .map((name) => ({ depthCm: Number.parseInt(name.slice("theta".length), 10), theta: column(name) }))
    .filter(({ theta }) => theta.filter((t) => !Number.isNaN(t)).length >= leastShareOfDays * days);
  return {
    startDate: rows[0][0],
    days,
    depthsCm: probes.map(({ depthCm }) => depthCm),
    theta: probes.map(({ theta }) => theta),
    soilTemp5C: column("soilTemp5C"),
    ...weatherOf(station, rows[0][0], days),
  };
}

type Weather = Pick<StationRecord, "rainMm" | "rainMissing" | "airTempC" | "et0Mm" | "sunriseH" | "sunsetH">;

function weatherOf(station: Station, startDate: string, days: number): Weather {
  const path = `weather/${station.weather}.csv`;
  const parsed = parseDailyWeather(readFileSync(new URL(path, data), "utf8"), {
    temperature: { kind: "interpolate", longestDays: longestGapDays },
    rain: "dry",
  });
  if (!parsed.ok) throw new RangeError(`stationRecord requires sound weather: got ${JSON.stringify(parsed.faults)}`);
  const { weather } = parsed;
  const [names, ...rows] = rowsOf(path);
  const skip = rows.findIndex(([date]) => date === startDate);
  if (skip < 0 || skip + days > rows.length) {
    throw new RangeError(`stationRecord requires ${days} days of weather from ${startDate}: got ${rows.length} rows`);
  }
  const part = (values: Float64Array): Float64Array => values.slice(skip, skip + days);
  const rainAt = names.indexOf("rainMm");
  const { et0Mm, sunriseH, sunsetH } = dailyEt0(weather, station.site, "penman-monteith");
  return {
    rainMm: part(weather.rainMm),
    rainMissing: Uint8Array.from(rows.slice(skip, skip + days), (row) => (row[rainAt] === "" ? 1 : 0)),
    airTempC: part(weather.tMinC).map((tMinC, d) => (tMinC + weather.tMaxC[skip + d]) / 2),
    et0Mm: part(et0Mm),
    sunriseH: part(sunriseH),
    sunsetH: part(sunsetH),
  };
}
