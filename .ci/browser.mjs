import { spawnSync } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/** Path of Chromium or Chrome. Installs Debian's package where none is found and apt can; undefined where it can't. */
export function findBrowser() {
  const asked = process.env.CHROMIUM;
  if (asked) {
    if (isProgram(asked)) return asked;
    console.log(`\n> browser: CHROMIUM requires the path of a program: got ${asked}`);
    return undefined;
  }
  const found = onPath();
  if (found !== undefined) return found;
  const began = Date.now();
  console.log("\n> browser: no Chromium found, installing Debian's package with apt-get (about 10 s) ...");
  apt(["update", "-qq"]);
  apt(["install", "-y", "-qq", "--no-install-recommends", "chromium"]);
  const installed = onPath();
  const seconds = ((Date.now() - began) / 1000).toFixed(1);
  if (installed === undefined) {
    console.log(`> browser: failed in ${seconds} s`);
    console.log("  The browser tests need Chromium and apt-get could not install it here.");
    console.log("  Install Chromium or Chrome by hand, or set CHROMIUM to its path, and run npm test again.");
  } else console.log(`> browser: done in ${seconds} s`);
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

/** The update may fail for one source of many, so only the browser found afterwards decides. */
function apt(args) {
  const [command, ...rest] = process.getuid?.() === 0 ? ["apt-get"] : ["sudo", "-n", "apt-get"];
  spawnSync(command, [...rest, "-o", "DPkg::Lock::Timeout=120", ...args], {
    stdio: ["ignore", "ignore", "inherit"],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
  });
}
