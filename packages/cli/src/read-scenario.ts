import { type ParsedScenario, parseScenario } from "rootledger/scenario";
import type { Io } from "./io.js";
import { readInput } from "./read-input.js";
import { sound } from "./refused.js";

/** The scenario of a file with what it left open. @throws Refused with its faults. */
export async function readScenario(file: string, io: Io): Promise<Extract<ParsedScenario, { readonly ok: true }>> {
  const { value, files } = sound(await readInput(file, io));
  return sound(parseScenario(value, files));
}
