/** Readings of a sensor file as they are kept on the device. */
export interface SensorFile {
  readonly name: string;
  /** What the numbers are: tensions, or water contents that the soil's curve turns into tensions. */
  readonly kind: "kPa" | "m3/m3";
  readonly series: readonly SensorSeries[];
}

/** One sensor: local standard time in minutes since 1 January 1970, and its values. */
export interface SensorSeries {
  readonly depthCm: number;
  readonly minutes: readonly number[];
  readonly values: readonly number[];
}

const key = "rootledger.sensors";

/** The file kept on this device; undefined where there is none or storage is forbidden. */
export function keptSensors(): SensorFile | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "null");
    return isFile(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a file, or forgets it. Returns whether there was room. */
export function keepSensors(file: SensorFile | undefined): boolean {
  try {
    if (file === undefined) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(file));
    return true;
  } catch {
    return false;
  }
}

function isFile(value: unknown): value is SensorFile {
  if (typeof value !== "object" || value === null) return false;
  const series: unknown = Reflect.get(value, "series");
  const numbers = (of: unknown): boolean => Array.isArray(of) && of.every((one) => typeof one === "number");
  return (
    typeof Reflect.get(value, "name") === "string" &&
    ["kPa", "m3/m3"].includes(String(Reflect.get(value, "kind"))) &&
    Array.isArray(series) &&
    series.every(
      (one) =>
        typeof one === "object" &&
        one !== null &&
        typeof Reflect.get(one, "depthCm") === "number" &&
        numbers(Reflect.get(one, "minutes")) &&
        numbers(Reflect.get(one, "values")),
    )
  );
}
