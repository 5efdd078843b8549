import { execFileSync } from "node:child_process";
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const library = join(root, "packages/rootledger");
const manifest = JSON.parse(readFileSync(join(library, "package.json"), "utf8"));
const subpaths = Object.keys(manifest.exports).map((key) => key.replace(/^\./, "rootledger"));

/** An empty folder outside the workspace, with the packed library installed from its tarball. */
let folder = "";

beforeAll(() => {
  if (!existsSync(join(library, "dist/index.js"))) throw new Error("the package test requires a build: npm run build");
  folder = mkdtempSync(join(tmpdir(), "rootledger-package-"));
  const [{ filename }] = JSON.parse(run("npm", ["pack", "--json", "--pack-destination", folder], library));
  write("package.json", JSON.stringify({ name: "consumer", private: true, type: "module" }));
  run("npm", ["install", "--no-audit", "--no-fund", "--prefer-offline", `./${filename}`], folder);
}, 180_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("the tarball holds the licence, its own README, model note, guides, changelog, citation file, declarations and no build notes", () => {
  const inside = (path: string) => join(folder, "node_modules/rootledger", path);
  expect(readFileSync(inside("LICENSE"), "utf8")).toBe(readFileSync(join(root, "LICENSE"), "utf8"));
  expect(readFileSync(inside("README.md"), "utf8")).toContain("compare(comparison)");
  for (const path of ["dist/index.d.ts", "docs/model.md", "CHANGELOG.md", "CITATION.cff"]) {
    expect(existsSync(inside(path)), path).toBe(true);
  }
  expect(existsSync(inside("dist/.tsbuildinfo"))).toBe(false);
  expect(existsSync(inside("fit"))).toBe(false);
});

test("every published path and the README's example type-check and run, and the example closes its books", () => {
  const imports = subpaths.map((path, i) => `import * as part${i} from "${path}";`).join("\n");
  const counts = subpaths.map((_, i) => `Object.keys(part${i}).length`).join(", ");
  write("paths.ts", `${imports}\nconsole.log(JSON.stringify([${counts}]));\n`);
  write("example.ts", readmeExample());
  write("tsconfig.json", JSON.stringify({ compilerOptions: consumerOptions, files: ["paths.ts", "example.ts"] }));
  run(process.execPath, [join(root, "node_modules/typescript/bin/tsc"), "-p", "."], folder);

  const namesByPath: number[] = JSON.parse(run(process.execPath, ["paths.js"], folder));
  expect(namesByPath.filter((count) => count === 0)).toEqual([]);

  const lines = offline("example.js").trim().split("\n");
  const residuals = lines.flatMap((line) => /residual (\S+)$/.exec(line)?.[1] ?? []);
  expect(residuals.length).toBeGreaterThan(0);
  for (const residual of residuals) expect(Math.abs(Number(residual))).toBeLessThan(1e-9);
}, 180_000);

test("every guide type-checks and runs as printed, offline, with nothing but the package and an optimiser", () => {
  const optimiser = join(root, "tests/node_modules/ml-levenberg-marquardt");
  symlinkSync(realpathSync(optimiser), join(folder, "node_modules/ml-levenberg-marquardt"), "dir");
  const docs = join(folder, "node_modules/rootledger/docs");
  const guides = readdirSync(docs).filter((name) => name !== "model.md");
  expect(guides.sort()).toEqual(["calibration.md", "ensemble.md", "first-run.md", "own-processes.md"]);
  const files = guides.map((name) => {
    const blocks = [...readFileSync(join(docs, name), "utf8").matchAll(/^```ts\n(.*?)^```$/gms)].map(
      ([, code]) => code,
    );
    expect(blocks.length, name).toBeGreaterThan(1);
    write(`guide-${name.replace(".md", ".ts")}`, blocks.join("\n"));
    return `guide-${name.replace(".md", ".ts")}`;
  });
  write("tsconfig.json", JSON.stringify({ compilerOptions: consumerOptions, files }));
  run(process.execPath, [join(root, "node_modules/typescript/bin/tsc"), "-p", "."], folder);
  const printed = Object.fromEntries(files.map((name) => [name, offline(name.replace(".ts", ".js"))]));
  console.log(Object.values(printed).join("\n"));
  for (const text of Object.values(printed)) {
    expect(text).not.toMatch(/NaN|undefined/);
    for (const [, residual] of text.matchAll(/residual (\S+)$/gm))
      expect(Math.abs(Number(residual))).toBeLessThan(1e-9);
  }
  expect(printed["guide-own-processes.ts"]).toMatch(/uptake, cell 0, hour 0/);
  expect(printed["guide-own-processes.ts"]).toMatch(/kind: 'stopped', hour: 12, by: 'wet for half a day'/);
  expect(printed["guide-ensemble.ts"]).toMatch(/2 finished; 1 failed: 2 /);
}, 240_000);

/** Runs a script of the consumer with every way to the network cut off. */
function offline(script: string): string {
  write(
    "offline.mjs",
    "import net from 'node:net'; import dns from 'node:dns';\nconst cut = () => { throw new Error('the network was asked for'); };\nnet.Socket.prototype.connect = cut; dns.lookup = cut; globalThis.fetch = cut;\n",
  );
  return run(process.execPath, ["--import", "./offline.mjs", script], folder);
}

/** Strict, on Node's own resolution, the library's declarations checked too. */
const consumerOptions = {
  target: "ES2022",
  module: "Node16",
  moduleResolution: "Node16",
  strict: true,
  lib: ["ES2022", "DOM"],
  types: [],
};

function readmeExample(): string {
  const example = /^```ts\n(.*?)^```$/ms.exec(readFileSync(join(root, "README.md"), "utf8"))?.[1];
  if (example === undefined) throw new Error("README.md requires a block that begins with ```ts");
  return example;
}

function write(name: string, text: string): void {
  writeFileSync(join(folder, name), text);
}

/** Without npm's variables of the surrounding run; what the command printed is in the error if it fails. */
function run(command: string, args: readonly string[], cwd: string): string {
  const env = Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(npm_(?!config_(cache|registry)$)|NODE_OPTIONS)/i.test(name)),
  );
  try {
    return execFileSync(command, args, { cwd, env, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
  } catch (error) {
    const { stdout, stderr } = error as { stdout?: string; stderr?: string };
    throw new Error(`${command} ${args.join(" ")} failed:\n${stdout ?? ""}${stderr ?? ""}`, { cause: error });
  }
}
