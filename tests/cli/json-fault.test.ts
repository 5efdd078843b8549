import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jsonFaultAt } from "../../packages/cli/src/json-fault.js";

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe("the place where a text stops being JSON", () => {
  it.each([
    ['{"a": }', 6],
    ['{"a": 1,}', 8],
    ["[1 2]", 3],
    ["[1,]", 3],
    ['{"a" 1}', 5],
    ["{a: 1}", 1],
    ["[1", 2],
    ["", 0],
    ["01", 0],
    ['"a\nb"', 0],
    ["tru", 0],
    ["1 1", 2],
    ["]", 0],
    ["[}", 1],
    ['"\u007f\u2028\ud800"', undefined],
    ['"\u001f"', 0],
  ])("%j", (text, at) => {
    expect(jsonFaultAt(text)).toBe(at);
  });

  it("is nowhere exactly in those texts that the engine reads", () => {
    const spoilt = fc
      .tuple(fc.json(), fc.nat(), fc.constantFrom("", ",", "}", "]", '"', ":", "0", "-", ".", "\\", "e", " ", "x"))
      .map(([text, at, mark]) => {
        const place = at % (text.length + 1);
        return text.slice(0, place) + mark + text.slice(place + (at % 2));
      });
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string(), spoilt), (text) => {
        expect(jsonFaultAt(text) === undefined).toBe(isJson(text));
      }),
      { numRuns: 3000 },
    );
  });
});
