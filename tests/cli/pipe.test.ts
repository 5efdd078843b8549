import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";

const built = fileURLToPath(new URL("../../packages/cli/dist/main.js", import.meta.url));
const shell = (line: string): string =>
  execFileSync("bash", ["-c", line, "bash", process.execPath, built], { encoding: "utf8", stdio: "pipe" });

it("a reader that has seen enough ends a command quietly", () => {
  expect(shell('{ "$1" "$2" truth | head -n 1 >/dev/null; echo "ended with $PIPESTATUS"; } 2>&1')).toBe(
    "ended with 0\n",
  );
});

it.skipIf(!existsSync("/dev/full"))("an answer that finds no room is told in one line", () => {
  expect(shell('"$1" "$2" truth 2>&1 >/dev/full || echo "ended with $?"')).toMatch(
    /^the answer cannot be written: ENOSPC[^\n]*\nended with 2\n$/,
  );
});
