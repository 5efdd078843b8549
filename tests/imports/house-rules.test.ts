import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { expect, test } from "vitest";
import { root, sources } from "./cruise-tree.js";
import { impurities } from "./purity.js";

/** Tables of printed numbers: the only files that may run past the limit. */
const tables: readonly string[] = [];
const lineLimit = 300;

const files = sources.flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts"))
    .map((path) => ({ path: `${folder}/${path}`, text: readFileSync(join(root, folder, path), "utf8") })),
);

test("the library uses no chance, no clock and no state at module level", () => {
  const library = files.filter(({ path }) => path.startsWith("packages/rootledger/"));
  expect(library.length).toBeGreaterThanOrEqual(120);
  expect(library.flatMap(({ path, text }) => impurities(text).map((what) => `${path}:${what}`))).toEqual([]);
});

test.each([
  ["const x = Math.random();", "1: Math.random"],
  ["export const f = () =>\n  Date.now();", "2: Date.now"],
  ["const today = new Date();", "1: new Date()"],
  ["const words = new Intl.NumberFormat();", "1: Intl"],
  ["let runs = 0;", "1: module-level variable"],
  ["const seen = new Map<string, number>();", "1: module-level store"],
  ["const seen: string[] = [];", "1: module-level store"],
])("planted: %s", (text, expected) => {
  expect(impurities(text)).toEqual([expected]);
});

test.each(["const day = new Date(0);", "const f = () => { let x = 1; const y: number[] = []; y.push(x++); };"])(
  "allowed: %s",
  (text) => {
    expect(impurities(text)).toEqual([]);
  },
);

test("files are named by their one concept and stay short", () => {
  const vague = files.filter(({ path }) => /^(utils?|helpers?|common|types|misc)\.ts$/.test(basename(path)));
  expect(vague.map(({ path }) => path)).toEqual([]);
  const long = files.filter(({ path, text }) => !tables.includes(path) && text.split("\n").length - 1 > lineLimit);
  expect(long.map(({ path }) => path)).toEqual([]);
});
