/** One way to answer a question: give `value` under the question's key. */
export interface StationChoice {
  readonly value: string;
  /** What the file says when read this way. */
  readonly meaning: string;
}

/** What a file leaves open and only its owner can say. Nothing is read until it is answered. */
export interface StationQuestion {
  /** The key of the answer, such as "date-order" or "unit:rain". */
  readonly key: string;
  readonly text: string;
  readonly choices: readonly StationChoice[];
  /** Places of the file that show what is asked, such as "line 2: 02/06/24". */
  readonly evidence: readonly string[];
}
