import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, expect, test } from "vitest";
import { breaches, cruiseTree, root, ruleNames, sources } from "./cruise-tree.js";
import { lawful, planted } from "./planted-breaches.js";

const folders: string[] = [];

afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

test("every import of the project follows the table, and every module was seen", async () => {
  const result = await cruiseTree(root);
  expect(breaches(result)).toEqual([]);
  const seen = new Set(result.modules.map(({ source }) => source));
  const files = sources.flatMap((folder) => sourceFiles(folder));
  expect(files.filter((file) => !seen.has(file))).toEqual([]);
  // Grows with the project: a cruise that sees fewer has lost a folder.
  expect(files.length).toBeGreaterThanOrEqual(200);
});

test("a lawful tree has no breach", async () => {
  expect(breaches(await cruiseTree(plant([])))).toEqual([]);
});

test("a planted breach of each rule is caught by that rule", async () => {
  const found = new Set(breaches(await cruiseTree(plant(planted))));
  expect(planted.map(({ file, rule }) => `${file}: ${rule}`).filter((breach) => !found.has(breach))).toEqual([]);
  const tried = new Set(planted.map(({ rule }) => rule));
  const names = await ruleNames();
  expect(names.length).toBeGreaterThan(20);
  expect(names.filter((name) => !tried.has(name))).toEqual([]);
});

function sourceFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts"))
    .map((path) => `${folder}/${path}`);
}

/** Writes the lawful tree with the breaches at the end of their files, beside stand-ins for the packages. */
function plant(extra: typeof planted): string {
  const folder = mkdtempSync(join(tmpdir(), "imports-"));
  folders.push(folder);
  const write = (path: string, text: string) => {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  };
  const files = { ...lawful };
  extra.forEach(({ file, text }, index) => {
    files[file] = `${files[file] ?? ""}${text.replaceAll("planted", `planted${index}`)}`;
  });
  for (const [path, text] of Object.entries(files)) write(path, text);
  write("tests/near.ts", "export const near = 1;\n");
  for (const name of ["zod", "d3-dsv", "seedrandom", "lit"]) {
    write(`node_modules/${name}/package.json`, JSON.stringify({ name, version: "1.0.0", main: "index.js" }));
    write(`node_modules/${name}/index.js`, "");
  }
  const source = { "rootledger-source": "./src/index.ts" };
  const deep = { "rootledger-source": "./src/ground/curve.ts" };
  const ground = { "rootledger-source": "./src/ground/index.ts" };
  const exports = { ".": source, "./ground": ground, "./ground/curve": deep };
  write("packages/rootledger/package.json", JSON.stringify({ name: "rootledger", version: "1.0.0", exports }));
  symlinkSync("../packages/rootledger", join(folder, "node_modules/rootledger"), "dir");
  return folder;
}
