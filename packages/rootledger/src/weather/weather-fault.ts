/** Something in a weather record that stops its use. Faults are collected: a reader sees all of them at once. */
export interface WeatherFault {
  readonly code: WeatherFaultCode;
  /** Where, like "line 12, tMinC"; "" for the file as a whole. */
  readonly path: string;
  /** The value found there, as text. */
  readonly received: string;
  /** What is required. */
  readonly rule: string;
}

/** Every kind of fault of a weather file. */
export type WeatherFaultCode =
  | "empty-file"
  | "not-comma-separated"
  | "unknown-column"
  | "duplicate-column"
  | "missing-column"
  | "wrong-cell-count"
  | "not-a-date"
  | "duplicate-date"
  | "date-out-of-order"
  | "gap-in-dates"
  | "not-a-number"
  | "missing-value"
  | "impossible-value"
  | "negative-rain"
  | "looks-like-fahrenheit"
  | "looks-like-fraction"
  | "min-above-max"
  | "check-latitude-sign"
  | "latitude-out-of-range"
  | "elevation-out-of-range"
  | "wind-height-out-of-range"
  | "krs-out-of-range"
  | "pan-coefficient-out-of-range"
  | "too-many-faults"
  | "not-text"
  | "no-table"
  | "too-many-columns"
  | "no-dates"
  | "no-values"
  | "mixed-date-orders"
  | "too-many-bad-rows"
  | "several-stations"
  | "too-short-record"
  | "unknown-answer"
  | "wrong-answer";
