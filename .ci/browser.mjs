import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { runStep } from "./step.mjs";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/** Path of Chromium or Chrome. Installs Debian's package where none is found and apt can; undefined where it can't. */
export async function findBrowser() {
  const asked = process.env.CHROMIUM;
  if (asked) {
    if (isProgram(asked)) return asked;
    console.log(`\n> browser: CHROMIUM requires the path of a program: got ${asked}`);
    return undefined;
  }
  const found = onPath();
  if (found !== undefined) return found;
  console.log("\n> browser: no Chromium found, installing Debian's package with apt-get (about 10 to 20 s)");
  // The lists may fail for one source of many, so only the browser found afterwards decides.
  await apt("browser: package lists", ["update", "-qq"]);
  await apt("browser: Chromium", ["install", "-y", "-qq", "--no-install-recommends", "chromium"]);
  const installed = onPath();
  if (installed === undefined) {
    console.log("\nThe browser tests need Chromium and apt-get could not install it here.");
    console.log("Install Chromium or Chrome by hand, or set CHROMIUM to its path, and run npm test again.");
  }
  return installed;
}

function onPath() {
  const folders = (process.env.PATH ?? "").split(delimiter).concat("/usr/bin", "/snap/bin");
  return folders.flatMap((folder) => names.map((name) => join(folder, name))).find(isProgram);
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function apt(name, args) {
  const [command, ...rest] = process.getuid?.() === 0 ? ["apt-get"] : ["sudo", "-n", "apt-get"];
  const env = { DEBIAN_FRONTEND: "noninteractive" };
  return runStep(name, command, [...rest, "-o", "DPkg::Lock::Timeout=120", ...args], { cwd: "/", env });
}
