/** Sensors drift a few percent over saturation in fog: up to 110 % is 100. Rows that were clipped. */
export function clipHumidity(values: Float64Array): number[] {
  const clipped: number[] = [];
  for (let i = 0; i < values.length; i++) {
    if (!(values[i] > 100 && values[i] <= 110)) continue;
    values[i] = 100;
    clipped.push(i);
  }
  return clipped;
}

/** A pyranometer cools below its dome at night and reads a few W/m2 under 0; more than this is no such offset. Own choice. */
const nightOffsetWPerM2 = 20;

/** Takes the night offset of radiation as 0, in place. Rows that were changed. */
export function nightToZero(values: Float64Array, stepMinutes: number): number[] {
  const least = (-nightOffsetWPerM2 * stepMinutes * 60) / 1e6;
  const changed: number[] = [];
  for (let i = 0; i < values.length; i++) {
    if (!(values[i] < 0 && values[i] >= least)) continue;
    values[i] = 0;
    changed.push(i);
  }
  return changed;
}
