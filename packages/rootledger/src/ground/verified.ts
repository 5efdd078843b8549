/** Whether a printed number was read in a source text (also a second-hand one) or is from memory. */
export type Verified = "seen" | "memory";
