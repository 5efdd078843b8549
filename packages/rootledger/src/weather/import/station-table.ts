import type { QuantityName } from "./quantity.js";

/** One series of a file, in the unit that its name ends in. */
export interface StationColumn {
  /** Quantity, depth and number, such as `soilTensionKPa_30cm_2`: the name under which it is written. */
  readonly name: string;
  readonly quantity: QuantityName;
  readonly depthCm: number | undefined;
  /** What the file calls it. */
  readonly header: string;
  /** NaN where there is no value. */
  readonly values: Float64Array;
  /** What each value is; see `mark`. */
  readonly marks: Uint8Array;
  /** Stamps from which another sensor stands behind the series: a step there is no event. */
  readonly sensorChanges: readonly { readonly minutes: number; readonly from: string; readonly to: string }[];
}

/** The records of a file in the order of time, without repeated stamps. */
export interface StationTable {
  /** Local standard time, minutes since the library's day 0; `stationTime` writes it. */
  readonly minutes: Float64Array;
  readonly stepMinutes: number;
  /** Minutes that local standard time is ahead of UTC; undefined where the file does not say. */
  readonly utcOffsetMinutes: number | undefined;
  /** Whether a stamp stands at the start or the end of its interval, or for a whole day. */
  readonly stamp: "start" | "end" | "day";
  /** Minutes after midnight at which a day begins in this record: 0, or for instance 540 for rain read at nine. */
  readonly dayStartMinutes: number;
  readonly columns: readonly StationColumn[];
}
