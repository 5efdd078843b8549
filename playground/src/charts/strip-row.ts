/** One measure of a pair of programmes on the difference strip. */
export interface StripRow {
  readonly measureId: string;
  readonly unit: string;
  /** The difference of one run, or the median over draws. */
  readonly value: number;
  readonly band?: {
    readonly low: number;
    readonly high: number;
    readonly risesShare: number;
    readonly fallsShare: number;
  };
  readonly floor: number;
  readonly verdict: "rises" | "falls" | "no clear difference";
}

/** Half the width of a row's axis in the unit of its measure: all that is drawn lies inside, zero in the middle. */
export function halfAxis({ value, band, floor }: StripRow): number {
  const most = Math.max(Math.abs(value), Math.abs(band?.low ?? 0), Math.abs(band?.high ?? 0), floor);
  return most > 0 ? 1.06 * most : 1;
}
