import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { expect, test } from "vitest";
import { type Example, examplesIn, functionsWithoutExample, namesUsed } from "./example-lines.js";
import { agrees } from "./printed-value.js";

const sources = fileURLToPath(new URL("../../packages/rootledger/src/", import.meta.url));
const paths = readdirSync(sources, { recursive: true, encoding: "utf8" }).filter((path) => path.endsWith(".ts"));
const modules = new Map<string, Record<string, unknown>>();
for (const path of paths) modules.set(path, await import(pathToFileURL(`${sources}${path}`).href));

const isPublic = (path: string): boolean => /^(index|units|[a-z]+\/index)\.ts$/.test(path);
const published = Object.assign({}, ...paths.filter(isPublic).map((path) => modules.get(path)));
const language = ["Float64Array", "JSON", "Math", "NaN", "Uint8Array", "undefined"];

/**
 * An example is run if every name in it is published by the library, exported by its own file or part of the language, and
 * compared if it prints a value. One that speaks of things it does not make (`scenario`, `grid`) shows how a call looks.
 */
test("every example of a doc comment that can be run gives what it prints", () => {
  const wrong: string[] = [];
  const counts = { ran: 0, ranSilently: 0, needsContext: 0, statements: 0 };
  for (const [path, own] of modules) {
    const names: Record<string, unknown> = { ...published, ...own };
    for (const example of examplesIn(path, readFileSync(`${sources}${path}`, "utf8"))) {
      const used = namesUsed(example.expression);
      const foreign = [...(used ?? [])].filter((name) => !(name in names) && !language.includes(name));
      if (used === undefined) counts.statements++;
      else if (foreign.length > 0) counts.needsContext++;
      else {
        counts[example.value === undefined ? "ranSilently" : "ran"]++;
        const fault = faultOf(example, names);
        if (fault !== undefined) wrong.push(`${example.file}:${example.line} ${example.expression} ${fault}`);
      }
    }
  }
  const { ran, ranSilently, needsContext, statements } = counts;
  console.log(
    `examples: ${ran} ran and were compared, ${ranSilently} ran and print no value; skipped: ${needsContext} need a context, ${statements} are not one expression`,
  );
  expect(wrong).toEqual([]);
  expect(counts.ran).toBeGreaterThanOrEqual(105);
});

test("every function that the library publishes has an example", () => {
  const bare = [...modules].flatMap(([path, own]) =>
    functionsWithoutExample(readFileSync(`${sources}${path}`, "utf8")).filter((name) => published[name] === own[name]),
  );
  expect(bare).toEqual([]);
});

function faultOf(example: Example, names: Record<string, unknown>): string | undefined {
  let value: unknown;
  try {
    value = new Function(...Object.keys(names), `"use strict"; return (${example.expression});`)(
      ...Object.values(names),
    );
  } catch (error) {
    return `throws ${error}`;
  }
  const printed = example.value;
  if (printed === undefined) return undefined;
  const answer = agrees(printed, value);
  if (answer === true) return undefined;
  if (answer === undefined) return `prints what cannot be read: ${printed}`;
  return `prints ${printed}, gives ${JSON.stringify(ArrayBuffer.isView(value) ? Array.from(value as Float64Array) : value)}`;
}

test.each([
  ["0.853", 0.8529, true],
  ["0.853", 0.8524, false],
  ["250 mm", 250.4, true],
  ["314.159...", 314.15926, true],
  ["about 8.5", 8.41, true],
  ["below 1e-9", -1e-12, true],
  ["below 1e-9", 1e-6, false],
  ['"loam"', "loam", true],
  ["[6, 7]", [6, 7], true],
  ["[6, 7]", [6, 7, 8], false],
  ["Float64Array [0, 5, ...]", new Float64Array([0, 5, 10]), true],
  ["Float64Array [NaN]", new Float64Array(1), false],
  ['{ ok: false, fault: { code: "x", ... } }', { ok: false, fault: { code: "x", path: "" } }, true],
  ["{ ok: false }", { ok: true }, false],
  ["grid.cells", 64, undefined],
] as [string, unknown, boolean | undefined][])(
  "a doc comment that prints %s and the value %s: %s",
  (printed, value, expected) => {
    expect(agrees(printed, value)).toBe(expected);
  },
);
