import { type ArmPicture, rowOf } from "../../charts/arm-picture.js";
import type { Trace } from "../../charts/trace-chart.js";
import type { DemoSoil } from "../../state/demo.js";
import { cellAt, tensionReader } from "./soil-tension.js";

/** Tension by hour at some depths at one distance from the row, over the days shown. */
export function tensionTraces(
  picture: ArmPicture,
  soil: DemoSoil,
  {
    depthsCm,
    fromRowCm,
    firstDay,
    days,
  }: {
    readonly depthsCm: readonly number[];
    readonly fromRowCm: number;
    readonly firstDay: number;
    readonly days: number;
  },
): Trace[] {
  const { section, theta } = picture;
  const cells = section.layers * section.lanes;
  return depthsCm.flatMap((depthCm) => {
    const cell = cellAt(section, depthCm, fromRowCm);
    if (cell === undefined) return [];
    const read = tensionReader(soil, depthCm);
    const kPa = new Float64Array(days * 24).fill(Number.NaN);
    for (let h = 0; h < kPa.length; h++) {
      const row = rowOf(picture, firstDay * 24 + h);
      if (row !== undefined) kPa[h] = read(theta[row * cells + cell]!);
    }
    return [{ depthCm, kPa }];
  });
}
