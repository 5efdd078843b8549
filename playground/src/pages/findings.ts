import { extent } from "d3";
import type { ArmPicture } from "../charts/arm-picture.js";

/** Shares of the hours in which root-zone water lies above the air line, and below the pull line. */
export function outsideLimits(storageMm: Float64Array, airLineMm: number, pullLineMm: number): [number, number] {
  let above = 0;
  let beneath = 0;
  for (const mm of storageMm) {
    if (mm > airLineMm) above++;
    else if (mm < pullLineMm) beneath++;
  }
  return [above / storageMm.length, beneath / storageMm.length];
}

/**
 * Ends of each soil's water axis, mm: both limits and all that happens lie inside, and every soil gets the same number of
 * mm per pixel, so that a litre looks the same everywhere.
 */
export function waterAxes(rows: readonly (readonly ArmPicture[])[]): { lowMm: number; highMm: number }[] {
  const ends = rows.map((arms) => {
    const all = arms.flatMap((arm) => [...(extent(arm.storageMm) as [number, number]), arm.airLineMm, arm.pullLineMm]);
    return { low: Math.min(...all), high: Math.max(...all) };
  });
  const room = Math.max(...ends.map(({ low, high }) => high - low)) * 1.12;
  return ends.map(({ low, high }) => {
    const middle = (low + high) / 2;
    const lowMm = Math.max(0, middle - room / 2);
    return { lowMm, highMm: lowMm + room };
  });
}

/** Rain of the wettest day, mm. */
export function wettestDay(rainMm: Float64Array): number {
  let most = 1;
  for (let day = 0; day < rainMm.length / 24; day++) {
    let sum = 0;
    for (let hour = day * 24; hour < (day + 1) * 24; hour++) sum += rainMm[hour]!;
    most = Math.max(most, sum);
  }
  return most;
}
