const sunnyDays = 5;

/**
 * Fills blanks of radiation at night with 0, in a copy: some loggers leave the cell empty while the sun is down. A time of day counts as
 * night in a month of the record if it never has sun in it while five days or more of the month have; a blank at a time of
 * day that has sun on other days of the month stays missing. Own rule. Returns the copy and how many were filled.
 */
export function fillDarkHours(
  records: Float64Array,
  day: Int32Array,
  ofDayMinutes: (record: number) => number,
  months: Int32Array,
  stepMinutes: number,
): { readonly records: Float64Array; readonly filled: number } {
  const slots = Math.ceil(1440 / stepMinutes);
  const sun = new Map<number, { readonly lit: Uint8Array; readonly days: Set<number> }>();
  for (let i = 0; i < records.length; i++) {
    if (!(records[i] > 0)) continue;
    const month = months[day[i]];
    let seen = sun.get(month);
    if (seen === undefined) {
      seen = { lit: new Uint8Array(slots), days: new Set() };
      sun.set(month, seen);
    }
    seen.lit[Math.floor(ofDayMinutes(i) / stepMinutes)] = 1;
    seen.days.add(day[i]);
  }
  const copy = records.slice();
  let filled = 0;
  for (let i = 0; i < copy.length; i++) {
    if (!Number.isNaN(copy[i])) continue;
    const seen = sun.get(months[day[i]]);
    if (seen === undefined || seen.days.size < sunnyDays) continue;
    if (seen.lit[Math.floor(ofDayMinutes(i) / stepMinutes)] === 1) continue;
    copy[i] = 0;
    filled++;
  }
  return { records: copy, filled };
}
