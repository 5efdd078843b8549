import { faultLines } from "./print/faults.js";
import type { InputFault } from "./read-input.js";
import { words } from "./words.js";

/** The input of a command is at fault: the message goes to stderr as it is, and the command ends with `exit.faults`. */
export class Refused extends Error {
  override readonly name = "Refused";
}

/** Faults of a file, one line each. */
export const faulty = (faults: readonly InputFault[]): Refused => new Refused(faultLines(faults));

/** Options that cannot be understood, and where to read about them. */
export const misused = (what: string): Refused => new Refused(`${what}; ${words.seeHelp}\n`);

/** What options ask for. @throws Refused if they say why they cannot be understood. */
export function usable<T>(asked: T | string): T {
  if (typeof asked === "string") throw misused(asked);
  return asked;
}

type Read = { readonly ok: true } | { readonly ok: false; readonly faults: readonly InputFault[] };

/** What was read of a file. @throws Refused with its faults. */
export function sound<R extends Read>(read: R): Extract<R, { readonly ok: true }> {
  if (!read.ok) throw faulty(read.faults);
  return read as Extract<R, { readonly ok: true }>;
}
