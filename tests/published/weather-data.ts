import { expect, test } from "vitest";
import checks from "../../data/published/weather.json";
import { expectWithin } from "./near.js";

type Printed = number | number[];

/** One published check; every expected figure has its own tolerance, half a printed unit unless the file says otherwise. */
interface WeatherCheck {
  readonly id: string;
  readonly topic: string;
  readonly title: string;
  readonly source: string;
  // biome-ignore lint/suspicious/noExplicitAny: every check has its own inputs, and the function beside its id names them.
  readonly inputs: any;
  readonly expected: Readonly<Record<string, Printed>>;
  readonly tolerance: Readonly<Record<string, number>>;
  readonly toleranceWiderThanPrint?: readonly string[];
  /** Read in print, recalled, or computed by us from a published formula (then it proves nothing but the round trip). */
  readonly verified: "seen" | "memory" | "derived";
}

const all = checks as unknown as readonly WeatherCheck[];
const said = { seen: "seen in print", memory: "from memory", derived: "derived, not printed" };

/** What the library gives for a check, by the names of its expected figures. */
// biome-ignore lint/suspicious/noExplicitAny: see above.
export type Ours = (inputs: any) => Readonly<Record<string, Printed>>;

/** One test for every check of a topic; a check without a function and a figure without a value fail. */
export function testTopic(topic: string, ours: Readonly<Record<string, Ours>>): void {
  const found = all.filter((check) => check.topic === topic);
  test(`every published check on ${topic} has its function`, () => {
    expect(found.length).toBeGreaterThan(0);
    expect(Object.keys(ours).sort()).toEqual(found.map((check) => check.id).sort());
  });
  for (const check of found) {
    const wider = check.toleranceWiderThanPrint
      ? `, tolerance wider than print: ${check.toleranceWiderThanPrint.join(", ")}`
      : "";
    test(`${check.id}: ${check.title} (${check.source}; ${said[check.verified]}${wider})`, () => {
      const values = ours[check.id](check.inputs);
      expect(Object.keys(values).sort()).toEqual(Object.keys(check.expected).sort());
      for (const [name, printed] of Object.entries(check.expected)) {
        const theirs = [printed].flat();
        const mine = [values[name]].flat();
        expect(mine.length, name).toBe(theirs.length);
        theirs.forEach((value, place) => {
          // The tolerance itself is a decimal fraction: a figure exactly half a unit away must not fail by its last bit.
          expectWithin(mine[place], value, check.tolerance[name] + 1e-12, `${name}[${place}]`);
        });
      }
    });
  }
}

export const publishedTopics = (): string[] => [...new Set(all.map((check) => check.topic))].sort();
