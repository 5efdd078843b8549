import { statSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openCompare } from "./compare-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

/** The picture of the README; written anew by `PICTURE=write npm run vitest -- browser/compare-picture`. */
const picture = fileURLToPath(new URL("../../data/demo/compare.png", import.meta.url));
const mostBytes = 300_000;

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

test("the page's first screen makes a picture of at most 300 kB", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(500);
  const png = await page.screenshot();
  expect(png.length).toBeLessThanOrEqual(mostBytes);
  if (process.env.PICTURE === "write") writeFileSync(picture, png);
  expect(statSync(picture).size).toBeLessThanOrEqual(mostBytes);
});
