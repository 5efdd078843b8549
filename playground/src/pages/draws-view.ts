import type { ComparisonResult, Difference } from "rootledger/compare";
import type { StripRow } from "../charts/strip-row.js";
import type { OwnWorkState } from "../worker/own-worker.js";
import type { DrawsAnswer } from "../worker/protocol.js";

/** The draws as the page shows them. */
export interface DrawsView {
  readonly state: OwnWorkState;
  readonly answer: DrawsAnswer | undefined;
  /** The answer is about programmes or soils from before a change. */
  readonly stale: boolean;
}

/** Measures of the strip; roots first, then water. */
const stripMeasures = ["thirsty", "airless", "transpiration", "below-roots", "evaporation"];

/** Nine draws of ten of a measure that the one run calls clear and the draws do not; undefined where they agree or are not there. */
export function unsureBand(
  difference: Pick<Difference, "measureId" | "verdict">,
  rows: readonly StripRow[],
): StripRow["band"] {
  if (difference.verdict === "no clear difference") return undefined;
  const row = rows.find(({ measureId }) => measureId === difference.measureId);
  return row?.verdict === difference.verdict ? undefined : row?.band;
}

/** The strip's rows of one pair: over the draws where there are any of this comparison, else the one run that is drawn. */
export function stripRows(
  result: ComparisonResult,
  { answer, stale }: DrawsView,
  of: { readonly soil: string; readonly tree: string; readonly from: string; readonly to: string },
): StripRow[] {
  const same = (d: { soil: string; tree: string; from: string; to: string; measureId: string }, id: string): boolean =>
    d.measureId === id && d.soil === of.soil && d.tree === of.tree && d.from === of.from && d.to === of.to;
  return stripMeasures.flatMap((id): StripRow[] => {
    const drawn = stale ? undefined : answer?.result.differences.find((d) => same(d, id));
    if (drawn !== undefined && Number.isFinite(drawn.median)) {
      const { measureId, unit, low, median, high, floor, verdict, risesShare, fallsShare } = drawn;
      return [{ measureId, unit, value: median, band: { low, high, risesShare, fallsShare }, floor, verdict }];
    }
    const one = result.differences.find((d) => same(d, id));
    if (one === undefined) return [];
    const { measureId, unit, difference, floor, verdict } = one;
    return [{ measureId, unit, value: difference, floor, verdict }];
  });
}
