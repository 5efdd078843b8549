/** Read in print (also second hand), recalled, or a choice of this project for want of a published value. */
export type Verified = "seen" | "memory" | "choice";

/** A number and where it comes from. */
export interface Sourced {
  readonly value: number;
  readonly source: string;
  readonly verified: Verified;
}

/** A preset number, with what other sources say where they disagree. */
export interface Disputed extends Sourced {
  readonly others: readonly Sourced[];
}
