import { type FaoSoil, faoSoilRanges, faoWettedFraction } from "rootledger/ground";
import { describe, expect, test } from "vitest";
import { soilChecks } from "./soil-data.js";

const pair = ({ low, high }: { low: number; high: number }): [number, number] => [low, high];

describe("FAO-56 soil tables", () => {
  test.each(soilChecks("fao56-table-19"))("%s", (_, { inputs, expected }) => {
    const row = faoSoilRanges[inputs.class as FaoSoil];
    expect(pair(row.fieldCapacity)).toEqual(expected.fieldCapacity);
    expect(pair(row.wiltingPoint)).toEqual(expected.wiltingPoint);
    expect(pair(row.available)).toEqual(expected.available);
    expect(pair(row.readilyEvaporableMm)).toEqual(expected.readilyEvaporableMm);
    expect(pair(row.totalEvaporableMm)).toEqual(expected.totalEvaporableMm);
    expect(row.verified).toBe("seen");
  });

  test.each(soilChecks("fao56-table-20"))("%s", (_, { expected }) => {
    const ours = Object.fromEntries(Object.entries(faoWettedFraction).map(([event, range]) => [event, pair(range)]));
    expect(ours).toEqual(expected);
  });
});
