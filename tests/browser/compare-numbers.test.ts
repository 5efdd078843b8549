import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { bundled } from "./bundled.js";
import { measuresOn, openCompare, sentence, settled } from "./compare-page.js";
import { type Opened, openPlayground } from "./open-playground.js";
import type { measuresOfFirstArm } from "./simulate-arm.js";

const demo = (name: string) => readFileSync(fileURLToPath(new URL(`../../data/demo/${name}`, import.meta.url)), "utf8");

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

test("opens with the demo drawn, and shows the library's own numbers", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  // In the same browser, because results are equal to the last bit on one JavaScript engine only.
  await page.evaluate(await bundled("simulate-arm.ts", "library"));
  const own = await page.evaluate(
    ([comparison, weather]) => {
      const { library } = globalThis as unknown as { library: { measuresOfFirstArm: typeof measuresOfFirstArm } };
      return library.measuresOfFirstArm(comparison, weather);
    },
    [demo("comparison.json"), demo("weather.csv")] as const,
  );
  expect(await measuresOn(page, 0)).toEqual(own);
  const drank = page.locator("rl-season-ledger").first().getByRole("row", { name: "Tree drank" }).locator("td").first();
  await expect.poll(() => drank.textContent()).toBe(`−${Math.round(own.transpiration!).toLocaleString("en-GB")}`);
  await expect.poll(() => page.locator("rl-badge-line li.holds").count()).toBe(4);
  await expect.poll(() => page.locator("rl-section-chart canvas").count()).toBe(6);
  expect(troubles).toEqual([]);
});

test("a changed word of a sentence is computed in the worker and named in the link", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  const before = await measuresOn(page, 2);
  await sentence(page, 2).getByLabel("Pulses in a run").selectOption("2");
  await settled(page);
  const after = await measuresOn(page, 2);
  expect(after["pump-starts"]).toBe(before["pump-starts"]! / 2);
  expect(after.applied).toBeCloseTo(before.applied!, 6);
  await expect.poll(() => sentence(page, 2).getByLabel("Minutes per pulse").inputValue()).toMatch(/^12[45]/);
  await page.waitForFunction(() => location.hash.includes("c.pulses=2"));
  expect(page.workers()).toHaveLength(1);
  expect(troubles).toEqual([]);
});

test("litres are held equal until the lock is opened; then the page says that they differ", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  await sentence(page, 1).getByLabel("Minutes per pulse").fill("125");
  await sentence(page, 1).getByLabel("Minutes per pulse").press("Enter");
  await settled(page);
  const [weekly, daily] = [await measuresOn(page, 0), await measuresOn(page, 1)];
  expect(weekly.applied).toBeCloseTo(daily.applied!, 3);
  await page.getByLabel("Same litres for all").uncheck();
  await sentence(page, 1).getByLabel("Minutes per pulse").fill("250");
  await sentence(page, 1).getByLabel("Minutes per pulse").press("Enter");
  await settled(page);
  // Litres are rounded to a hundredth of a litre a day when minutes set them.
  expect((await measuresOn(page, 1)).applied! / daily.applied!).toBeCloseTo(2, 3);
  await page.locator("rl-badge-line li.differs", { hasText: "Not the same water" }).waitFor();
  await expect.poll(() => page.locator("h1").textContent()).toContain("not the same water");
});

test("a comparison that changes two things at once says so", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, `${playground.url}#v=1&b.pulses=4`);
  await page.locator("rl-verdict-list h4", { hasText: "A to B changes interval and pulses at once" }).first().waitFor();
  await page.locator("rl-badge-line li.differs", { hasText: "More than one question at once" }).waitFor();
});

test("a page reloaded in the moment of a change shows the change", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  await sentence(page, 2).getByLabel("Pulses in a run").selectOption("2");
  await page.reload();
  await settled(page);
  await expect.poll(() => sentence(page, 2).getByLabel("Pulses in a run").inputValue()).toBe("2");
});
