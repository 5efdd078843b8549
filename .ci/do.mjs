// The two commands, and the checks alone. Needs only git, node and npm: everything else comes from the package registry
// and, for the browser, from Debian's packages.
//   start [--once]   install, build, print the comparison, serve the playground (--once ends after printing)
//   test             install, find the browser, build, check, run every test; last line "N passed, N failed"
//   check            types, formatter, linter, import rules, dead exports, package linters
import { readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { findBrowser } from "./browser.mjs";
import { countTests } from "./count-tests.mjs";
import { serve } from "./serve.mjs";
import { runStep } from "./step.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const [task, ...flags] = process.argv.slice(2);
const tasks = { start, test, check };
const attwOutput = ["--format", "table-flipped", "--no-emoji", "--no-summary"];
const sources = ["packages/rootledger/src", "packages/cli/src", "playground/src"];

const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19))
  stop(`Node 20.19 or newer is needed; this is ${process.versions.node}.`);
if (!Object.hasOwn(tasks, task)) stop(`do.mjs requires ${Object.keys(tasks).join(", ")}: got ${task}`);
await tasks[task]();

async function start() {
  await must("install", ...installCommand());
  await must("build", "npm", ["run", "--silent", "build"]);
  const compare = ["packages/cli/dist/main.js", "compare", "data/demo/comparison.json"];
  await must("compare", process.execPath, compare, { show: true });
  if (!flags.includes("--once")) await serve(join(root, "playground/dist"), 4321);
}

async function test() {
  await must("install", ...installCommand());
  const browser = await findBrowser();
  await must("build", "npm", ["run", "--silent", "build"]);
  const failures = await runChecks();
  const report = join(root, "out/vitest.json");
  rmSync(report, { force: true });
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  const projects = browser === undefined ? ["--project=node"] : [];
  const env = browser === undefined ? {} : { CHROMIUM: browser };
  const { ok } = await step("tests", "npm", ["run", "--silent", "vitest", "--", ...reporters, ...projects], { env });
  const counted = countTests(report, ok);
  if (browser === undefined) failures.push("browser tests (no browser)");
  finish(counted.passed, counted.failed, [...failures, ...counted.reasons]);
}

async function check() {
  const failures = await runChecks();
  if (failures.length > 0) stop(`failed: ${failures.join(", ")}`);
}

/** Runs every check, also after one has failed; returns the names of those that did. */
async function runChecks() {
  const failures = [];
  const checks = [
    ["types", "tsc", ["-b"]],
    ["format and lint", "biome", ["ci", "--error-on-warnings", "."]],
    ["imports", "depcruise", ["--config", ".dependency-cruiser.mjs", ...sources]],
    ["dead exports", "knip", ["--config", ".knip.json"]],
    ["package rootledger", "publint", ["packages/rootledger", "--strict", "--pack", "npm"]],
    ["package @rootledger/cli", "publint", ["packages/cli", "--strict", "--pack", "npm"]],
    ["docs of every public symbol", "typedoc", ["--options", ".typedoc.json", "--emit", "none", "--logLevel", "Warn"]],
    ["types of rootledger", "attw", ["--pack", "packages/rootledger", "--profile", "esm-only", ...attwOutput]],
  ];
  for (const [name, tool, args] of checks) {
    const { ok, output } = await step(name, join(root, "node_modules/.bin", tool), args);
    if (!ok) failures.push(name);
    else if (tool === "depcruise" && !sawEveryModule(output)) failures.push(name);
  }
  return failures;
}

/** A cruise without a working compiler sees no module and reports success, so its count is held against the files. */
function sawEveryModule(output) {
  const files = sources.flatMap((folder) => readdirSync(join(root, folder), { recursive: true }));
  const modules = files.filter((path) => path.endsWith(".ts")).length;
  const seen = Number(/\((\d+) modules/.exec(output)?.[1] ?? 0);
  if (seen < modules) console.log(`  imports: saw ${seen} modules, but there are ${modules} source files`);
  return seen >= modules;
}

function installCommand() {
  const { packageManager } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const args = ["--yes", packageManager, "install", "--frozen-lockfile", "--prefer-offline"];
  return ["npx", args, { env: { CI: "true" } }];
}

function step(name, command, args, options = {}) {
  return runStep(name, command, args, { cwd: root, ...options });
}

/** A step without which nothing after it makes sense. */
async function must(name, command, args, options) {
  const { ok } = await step(name, command, args, options);
  if (ok) return;
  console.error(`\n${name} failed; what it printed is above.`);
  if (task === "test") finish(0, 0, [name]);
  process.exit(1);
}

function finish(passed, failed, reasons) {
  for (const reason of reasons) console.log(`failed: ${reason}`);
  const total = failed + reasons.length;
  console.log(`${passed} passed, ${total} failed`);
  process.exit(total === 0 ? 0 : 1);
}

function stop(message) {
  console.error(message);
  process.exit(1);
}
