import type { WeatherFault, WeatherFaultCode } from "../weather-fault.js";
import type { StationChoice, StationQuestion } from "./station-question.js";

/** Why a file is not read further: something to ask, or faults that no answer helps. */
export type Stop =
  | { readonly stop: "question"; readonly question: StationQuestion }
  | { readonly stop: "faults"; readonly faults: readonly WeatherFault[] };

export const isStop = (value: unknown): value is Stop => typeof value === "object" && value !== null && "stop" in value;

export const ask = (
  key: string,
  text: string,
  choices: readonly StationChoice[],
  evidence: readonly string[] = [],
): Stop => ({ stop: "question", question: { key, text, choices, evidence: evidence.slice(0, 8) } });

export const fault = (code: WeatherFaultCode, path: string, received: string, rule: string): Stop => ({
  stop: "faults",
  faults: [{ code, path, received: received.slice(0, 80), rule }],
});
