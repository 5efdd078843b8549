/** A record of rain that is checked with its owner, mm; own choice. */
const leastMm = 100;

/**
 * Rain of one record that stands alone: 100 mm or more and over five times the next largest of the file, if the file is long enough to judge (ten
 * readings). Its row, or -1. Own rule; the storms of the long records kept with this library pass it.
 */
export function rainSpike(values: Float64Array): number {
  let at = -1;
  let largest = 0;
  let next = 0;
  let readings = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    if (Number.isNaN(value)) continue;
    readings++;
    if (value > largest) {
      next = largest;
      largest = value;
      at = i;
    } else if (value > next) next = value;
  }
  return readings >= 10 && largest >= leastMm && largest > 5 * next ? at : -1;
}
