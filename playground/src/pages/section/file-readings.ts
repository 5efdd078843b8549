import type { DemoSoil } from "../../state/demo.js";
import type { SensorFile } from "../../state/kept-sensors.js";
import type { Reading } from "../../state/scene.js";
import { tensionReader } from "./soil-tension.js";

/** Readings of a file within the season, as tensions by hour; water contents go through the soil's curve at their depth. */
export function fileReadings(
  { kind, series }: SensorFile,
  soil: DemoSoil,
  { startDate, days }: { readonly startDate: string; readonly days: number },
): Reading[] {
  const startMinutes = Date.parse(`${startDate}T00:00:00Z`) / 60_000;
  return series.flatMap(({ depthCm, minutes, values }) => {
    const read = kind === "kPa" ? (value: number): number => value : tensionReader(soil, depthCm);
    return minutes.flatMap((at, i): Reading[] => {
      const hour = (at - startMinutes) / 60;
      return hour >= 0 && hour < days * 24 ? [{ hour, depthCm, kPa: read(values[i]!) }] : [];
    });
  });
}
