// The two commands. `start`: install, build, print the comparison, serve the playground. `test`: install, build, check, test.
// Needs only node and npm; everything else comes from the package registry and, for the browser, from Debian's packages.
import { spawn, spawnSync } from "node:child_process";
import { createReadStream, existsSync, readFileSync, rmSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
const pnpm = ["--yes", manifest.packageManager];
const [task, ...flags] = process.argv.slice(2);
const failures = [];

const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  stop(`Node 20.19 or newer is needed; this is ${process.versions.node}.`);
}

if (task === "start") await start();
else if (task === "test") await test();
else stop(`do.mjs requires "start" or "test": got ${task}`);

async function start() {
  await install();
  await step("build", "npx", [...pnpm, "run", "build"]);
  await step("compare", process.execPath, ["packages/cli/dist/main.js", "compare", "data/demo/comparison.json"], "show");
  if (flags.includes("--once")) return;
  serve(join(root, "playground/dist"));
}

async function test() {
  await install();
  const browser = findBrowser();
  await step("build", "npx", [...pnpm, "run", "build"]);
  await step("check", "npx", [...pnpm, "run", "check"], "count");
  const report = join(root, "out/vitest.json");
  rmSync(report, { force: true });
  const args = ["run", "vitest", "--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  await step("tests", "npx", [...pnpm, ...args], "count", { CHROMIUM: browser });
  finish(report);
}

function finish(report) {
  let passed = 0;
  let failed = 0;
  if (existsSync(report)) {
    const counts = JSON.parse(readFileSync(report, "utf8"));
    passed = counts.numPassedTests;
    failed = counts.numFailedTests + (counts.numPassedTests > 0 ? 0 : 1);
    if (failed === 0 && failures.includes("tests")) failed = 1;
  } else failed = 1;
  if (failures.includes("check")) failed += 1;
  if (failures.length > 0) console.log(`failed: ${failures.join(", ")}`);
  console.log(`${passed} passed, ${failed} failed`);
  process.exit(failed === 0 ? 0 : 1);
}

async function install() {
  await step("install", "npx", [...pnpm, "install", "--frozen-lockfile", "--prefer-offline"]);
}

/** Runs one step with its time; its output is shown, and a sign of life every ten seconds where there is none. */
function step(name, command, args, onFailure = "stop", extra = {}) {
  const began = Date.now();
  console.log(`\n> ${name} ...`);
  return new Promise((resolve) => {
    const env = { ...process.env, ...extra };
    const child = spawn(command, args, { cwd: root, stdio: ["ignore", "inherit", "inherit"], env });
    const alive = setInterval(() => console.log(`  ${name}: ${seconds(began)} s so far`), 10_000);
    child.on("error", (error) => stop(`${name} could not be started: ${error.message}`));
    child.on("close", (code) => {
      clearInterval(alive);
      console.log(`> ${name}: ${code === 0 ? "done" : `failed (${code})`} in ${seconds(began)} s`);
      if (code !== 0) {
        if (onFailure === "count") failures.push(name);
        else stop(`${name} failed; what it printed is above.`);
      }
      resolve();
    });
  });
}

function seconds(since) {
  return ((Date.now() - since) / 1000).toFixed(1);
}

/** Path of Chromium; installs Debian's package where it is missing and apt can do it. */
function findBrowser() {
  const names = [process.env.CHROMIUM, "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
  const found = names.find((name) => name && existsSync(name));
  if (found) return found;
  const asRoot = process.getuid?.() === 0 ? [] : ["sudo", "-n"];
  console.log("\n> browser: Chromium is missing, installing it with apt-get ...");
  const began = Date.now();
  const quiet = { stdio: ["ignore", "ignore", "inherit"], env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } };
  for (const args of [
    ["apt-get", "update", "-qq"],
    ["apt-get", "install", "-y", "-qq", "--no-install-recommends", "chromium"],
  ]) {
    const [command, ...rest] = [...asRoot, ...args];
    const done = spawnSync(command, rest, quiet);
    if (done.status !== 0) {
      stop("The browser tests need Chromium. Install it by hand, or set CHROMIUM to the path of a Chromium or Chrome.");
    }
  }
  console.log(`> browser: done in ${seconds(began)} s`);
  return "/usr/bin/chromium";
}

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".woff": "font/woff",
};

/** Serves the built playground on this machine only, at port 4321 or the next free one. */
function serve(folder, port = 4321) {
  const server = createServer((request, response) => {
    const asked = normalize(decodeURIComponent(new URL(request.url, "http://localhost").pathname));
    const file = join(folder, asked.endsWith("/") ? `${asked}index.html` : asked);
    if (!file.startsWith(folder) || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end("not found");
      return;
    }
    response.writeHead(200, { "content-type": types[extname(file)] ?? "application/octet-stream" });
    createReadStream(file).pipe(response);
  });
  server.on("error", (error) => {
    if (error.code === "EADDRINUSE" && port < 4400) serve(folder, port + 1);
    else stop(`The playground could not be served: ${error.message}`);
  });
  server.listen(port, "127.0.0.1", () => {
    console.log(`\nThe playground is at http://127.0.0.1:${port}/  (Ctrl+C ends it)`);
  });
}

function stop(message) {
  console.error(`\n${message}`);
  process.exit(1);
}
