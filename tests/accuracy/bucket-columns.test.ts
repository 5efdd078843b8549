import { describe, expect, it } from "vitest";
import { bucketDrainChecks, bucketEmitterChecks, bucketRainChecks } from "./bucket-checks.js";
import { columnCases } from "./column-case.js";
import { emitterCases } from "./emitter-case.js";

const misses = (checks: readonly { pass: boolean }[]) => checks.filter((c) => !c.pass);

describe("bucket against fine-grid Richards in columns and under one emitter", () => {
  it.each(columnCases.drain.map((c) => [c.id, c] as const))("%s", (_, c) => {
    expect(misses(bucketDrainChecks(c))).toEqual([]);
  });
  it.each(columnCases.rain.map((c) => [c.id, c] as const))("%s", (_, c) => {
    expect(misses(bucketRainChecks(c))).toEqual([]);
  });
  it.each(emitterCases.map((c) => [c.id, c] as const))("%s", (_, c) => {
    expect(misses(bucketEmitterChecks(c))).toEqual([]);
  });
});
