import { readFileSync } from "node:fs";
import { version } from "rootledger";
import { expect, test } from "vitest";

test.each(["rootledger", "cli"])("the version that results carry is the one packages/%s publishes", (name) => {
  const manifest = readFileSync(new URL(`../../packages/${name}/package.json`, import.meta.url), "utf8");
  expect(JSON.parse(manifest).version).toBe(version);
});
