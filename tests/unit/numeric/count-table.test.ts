import fc from "fast-check";
import { expect, test } from "vitest";
import { createCountTable } from "../../../packages/rootledger/src/numeric/count-table.js";

test("a count table counts as a map does, whatever the numbers and their order", () => {
  const key = fc.oneof(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 2 ** 21 }));
  fc.assert(
    fc.property(fc.array(fc.tuple(key, fc.integer({ min: 1, max: 9 })), { maxLength: 600 }), (adds) => {
      const table = createCountTable();
      const map = new Map<number, number>();
      for (const [number, times] of adds) {
        table.add(number, times);
        map.set(number, (map.get(number) ?? 0) + times);
      }
      const byKey = ([a]: [number, number], [b]: [number, number]): number => a - b;
      expect(table.rising()).toEqual([...map].sort(byKey).flat());
    }),
  );
});
