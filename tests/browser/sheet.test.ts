import { afterAll, beforeAll, expect, test } from "vitest";
import { openPage } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

test("the sheet says litres, hours and starts, three readings that would prove it wrong, and fits half a page in print", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 794, height: 1123 } });
  await openPage(page, playground.url, "sheet", "&shown=1&soil=1");
  const article = page.locator("rl-sheet-page article");
  await expect.poll(() => article.locator(".amount").textContent()).toMatch(/^133 L for each tree/);
  await expect.poll(() => article.locator(".how", { hasText: "Open at 06:00, for 4 h 9 min." }).count()).toBe(1);
  await expect.poll(() => article.locator(".read").count()).toBe(3);
  await page.emulateMedia({ media: "print" });
  const { height } = (await article.boundingBox())!;
  // Half of A4 is 148 mm high, 561 px at 96 to the inch; with margins a page of the sheet's own may be a little more.
  expect(height).toBeLessThan(1123 - 2 * 45);
  await page.emulateMedia({ media: "screen" });
  await page.getByLabel("Programme:").selectOption("2");
  await article.locator(".how", { hasText: "4 times a day" }).waitFor({ timeout: 90_000 });
  expect(troubles).toEqual([]);
});
