import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { expectHalfPage } from "./half-page.js";
import { openPage } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
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
  await expect.poll(() => article.locator(".read").count(), { timeout: 120_000 }).toBe(3);
  await expectHalfPage(page, article);
  await page.getByLabel("Programme:").selectOption("2");
  await article.locator(".how", { hasText: "4 times a day" }).waitFor({ timeout: 90_000 });
  // The weekly run leaves the soil too dry: one line more.
  await page.getByLabel("Programme:").selectOption("0");
  await page.getByLabel("Soil:").selectOption("0");
  await article.locator(".how", { hasText: "expected beyond 20 kPa" }).waitFor({ timeout: 90_000 });
  await article.locator(".read").first().waitFor({ timeout: 120_000 });
  await expectHalfPage(page, article);
  expect(troubles).toEqual([]);
});

test("a Spanish sheet names tree and weather of the example in Spanish", async () => {
  const { page } = await playground.newPage();
  await openPage(page, playground.url, "sheet", "&shown=1&lang=es");
  const article = page.locator("rl-sheet-page article");
  await expect.poll(() => article.textContent()).toMatch(/Árbol: palto o aguacate\..*Valle Almagra \(inventado\)/s);
  expect(await article.textContent()).not.toMatch(/avocado|invented/);
});

test.each([
  ["en", /No run of this programme falls into the two weeks/],
  ["es", /Ningún riego de este programa cae en las dos semanas/],
])("a day with no run before the season ends is said in words, not as an error: %s", async (language, said) => {
  const { page, troubles } = await playground.newPage();
  // The season's 84th day; a run every 14 days came last on day 70.
  await page.goto(`${playground.url}#v=1&page=sheet&hour=2015&a.every=14&lang=${language}`);
  const failed = page.locator("rl-sheet-page .failed");
  await expect.poll(() => failed.textContent()).toMatch(said);
  expect(await failed.textContent()).not.toMatch(/sheet requires/);
  expect(troubles).toEqual([]);
});

test.each(["en", "es"])("the sheet of the command line fits half a page too: %s", async (language) => {
  const { page } = await playground.newPage();
  const argv = ["sheet", "data/demo/scenario.json", "--as", "html", "--language", language, "--members", "2"];
  const html = execFileSync(process.execPath, ["packages/cli/dist/main.js", ...argv], { cwd: root, encoding: "utf8" });
  await page.setContent(html);
  await expectHalfPage(page, page.locator("body"));
});
