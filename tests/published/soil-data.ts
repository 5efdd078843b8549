import checks from "../../data/published/soil.json";

/** One published soil check; `expected` and `inputs` are read by the test of its topic. */
export interface SoilCheck {
  readonly id: string;
  readonly topic: string;
  readonly source: string;
  // biome-ignore lint/suspicious/noExplicitAny: every topic has its own fields, and its test names them.
  readonly inputs: any;
  // biome-ignore lint/suspicious/noExplicitAny: see above.
  readonly expected: any;
  // biome-ignore lint/suspicious/noExplicitAny: see above.
  readonly tolerance: any;
  readonly verified: string;
}

/** Checks of one topic as rows for `test.each`; the title is the id and where the number comes from. */
export function soilChecks(topic: string): [string, SoilCheck][] {
  const found = (checks as SoilCheck[]).filter((check) => check.topic === topic);
  if (found.length === 0) throw new Error(`no published soil checks of topic ${topic}`);
  return found.map((check) => [`${check.id} [${check.verified}]: ${check.source}`, check]);
}
