import { column } from "rootledger";
import type { SeasonStrip } from "../charts/time-scrubber.js";
import type { Answer } from "../worker/protocol.js";

let made: { readonly season: Answer; readonly strip: SeasonStrip } | undefined;

/** Rain and wanted water by day, for the strip behind the hand of time; made once per season. */
export function seasonStrip(season: Answer, startDate: string): SeasonStrip {
  if (made?.season !== season) {
    const { days } = season.result.arms[0]!.result;
    const one = (name: string): Float64Array =>
      column(days, name).values.filter((_, i) => i % days.trees === days.trees - 1);
    made = { season, strip: { startDate, days: days.rows, rainMm: one("rain"), wantedL: one("wanted") } };
  }
  return made.strip;
}
