import infiltration from "../../data/published/infiltration.json";
import wetting from "../../data/published/wetting.json";

/** One published check of wetting or infiltration; `expected` and `inputs` are read by the test of its topic. */
interface WettingCheck {
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
export function wettingChecks(topic: string): [string, WettingCheck][] {
  const found = [...(wetting as WettingCheck[]), ...(infiltration as WettingCheck[])].filter((c) => c.topic === topic);
  if (found.length === 0) throw new Error(`no published checks of topic ${topic}`);
  return found.map((check) => [`${check.id} [${check.verified}]: ${check.source}`, check]);
}
