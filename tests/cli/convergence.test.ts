import { main } from "@rootledger/cli";
import { expect, test } from "vitest";
import { dataPath, demoJson } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const file = demoJson("scenario");
const path = dataPath("demo/scenario.json");
const short = JSON.stringify({ ...file, season: { ...file.season, days: 5 }, start: { kind: "same-state" } });

test("prints what halving step and layers changes, and the safe step; the same as JSON", async () => {
  const { io, written } = memoryIo({ [path]: short });
  expect(await main(["convergence", path], io)).toBe(0);
  expect(written.stdout).toMatch(/step 0\.0025 +step 0\.00125 +0\.005, half layers/);
  expect(written.stdout).toMatch(/Airless, root-hours( +-?[\d.]+){6}/);
  expect(written.stdout).toMatch(/Safe step: thetaDoubtPerStep 0\.0|Neither 0\.005 nor 0\.0025/);
  const { io: other, written: said } = memoryIo({ [path]: short });
  expect(await main(["convergence", path, "--json"], other)).toBe(0);
  expect(JSON.parse(said.stdout).rows).toHaveLength(4);
});
