import type { Sheet } from "rootledger/advise";
import type { FaultLine } from "./protocol.js";

/** Asks for the grower's sheet of one scenario file from a day of its season on. */
export interface SheetRequest {
  readonly file: object;
  readonly files: Readonly<Record<string, string>>;
  readonly day: number;
}

export type SheetMessage =
  /** A sheet whose bands rest on so many draws, of all that are to come. */
  | { readonly kind: "sheet"; readonly sheet: Sheet; readonly members: number; readonly all: number }
  | { readonly kind: "faults"; readonly faults: readonly FaultLine[] }
  /** No run falls into the days that the sheet would hold. */
  | { readonly kind: "no-run" }
  | { readonly kind: "failed"; readonly message: string };
