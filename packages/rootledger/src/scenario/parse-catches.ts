import { lowQuarterUniformity } from "../lines/uniformity.js";
import type { DefaultUsed } from "../water/result.js";
import { defaults } from "./defaults.js";
import { type Fault, fault } from "./faults.js";
import { pick } from "./parse-default.js";
import type { CatchesFile, LinesFile } from "./schema-block.js";

/** A mean flow this far from what the file says is told, as a share of it. Our choice, no source. */
const flowApartFraction = 0.1;

const amountsOf = ({ volumesMl, flowsLPerH }: CatchesFile): readonly number[] => volumesMl ?? flowsLPerH ?? [];

/** What the shape of a catch-can test cannot say. */
export function catchFaults({ catches, lowQuarterUniformityFraction }: LinesFile, path: string): Fault[] {
  if (catches === undefined) return [];
  const at = `${path}.catches`;
  const found: Fault[] = [];
  if ((catches.volumesMl === undefined) === (catches.flowsLPerH === undefined)) {
    found.push(fault("exactly-one-of", at, catches, { options: "volumesMl, flowsLPerH" }));
  }
  if (lowQuarterUniformityFraction !== undefined) {
    const terms = { other: at, reason: "it is worked out from the catches" };
    found.push(fault("not-beside", `${path}.lowQuarterUniformityFraction`, lowQuarterUniformityFraction, terms));
  }
  const amounts = amountsOf(catches);
  const dry = amounts.filter((amount) => amount === 0).length;
  if (amounts.length > 0 && dry >= amounts.length / 4) {
    const key = catches.volumesMl === undefined ? "flowsLPerH" : "volumesMl";
    found.push(fault("low-quarter-dry", `${at}.${key}`, amounts, { dry, count: amounts.length }));
  }
  return found;
}

/** Low-quarter uniformity: worked out from catches, else as said, else the default. */
export function filledUniformity(lines: LinesFile, path: string, used: DefaultUsed[], notes: string[]): number {
  const { catches, emitterFlowLPerH, lowQuarterUniformityFraction: said } = lines;
  const at = `${path}.lowQuarterUniformityFraction`;
  if (catches === undefined) return pick(used, at, said, defaults.lowQuarterUniformityFraction);
  const amounts = amountsOf(catches);
  const uniformity = lowQuarterUniformity(amounts);
  const source = `worked out from ${amounts.length} catches: mean of the lowest quarter over the mean of all (Merriam & Keller 1978)`;
  used.push({ path: at, value: uniformity.toPrecision(3), source });
  if (catches.flowsLPerH !== undefined) {
    const mean = amounts.reduce((sum, amount) => sum + amount, 0) / amounts.length;
    if (Math.abs(mean - emitterFlowLPerH) > flowApartFraction * emitterFlowLPerH) {
      notes.push(
        `emitters were caught at ${mean.toPrecision(3)} L/h on the mean, ${path}.emitterFlowLPerH says ${emitterFlowLPerH}`,
      );
    }
  }
  return uniformity;
}
