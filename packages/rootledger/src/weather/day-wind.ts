import type { Et0Counts } from "./et0-notes.js";

/** FAO-56 ch. 3, where no wind was measured: the mean of over 2000 stations. */
const assumedWindMPerS = 2;
/** FAO-56 ch. 3: at least this in the equation, since warm air rises by itself on calm days. */
const leastWindMPerS = 0.5;

/** Wind at 2 m, m/s, of a measured speed that may be missing, by the rules of FAO-56 ch. 3. */
export function dayWindAt2mMPerS(measuredMPerS: number, factorTo2m: number, counts: Et0Counts): number {
  if (!(measuredMPerS >= 0)) {
    counts.windAssumed++;
    return assumedWindMPerS;
  }
  const wind = measuredMPerS * factorTo2m;
  if (wind < leastWindMPerS) {
    counts.windRaised++;
    return leastWindMPerS;
  }
  return wind;
}
