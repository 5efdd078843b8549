import { afterAll, beforeAll, expect, test } from "vitest";
import { drawn, openPage } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

test("readings are typed as numbers, become dots, are held against the model and stay in the link", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "section", "&hour=1039");
  await page.getByLabel("Depth, cm").fill("20");
  await page.getByLabel("Reading").fill("4,5");
  await page.getByLabel("Reading").press("Enter");
  await page.getByRole("button", { name: "Add the reading" }).click();
  const list = page.locator("rl-readings-list li");
  expect(await list.first().textContent()).toMatch(/13 Jan, 07:00, 20 cm: read 4\.5 kPa; the model says [\d.]+ kPa/);
  await page.locator("rl-trace-chart .reading").waitFor();
  await page.waitForFunction(() => location.hash.includes("readings=1039-20-4.5"));
  expect(await page.locator("rl-readings-list .verdict").textContent()).toContain("lacks air");
  await page.reload();
  await drawn(page, "section");
  expect(await list.count()).toBe(1);
  await list.first().getByRole("button").click();
  expect(await list.count()).toBe(0);
  expect(troubles).toEqual([]);
});

test("one state is said in percent, tension, depth and litres, whichever is typed", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "section", "&soil=1");
  const field = (name: string) => page.locator("rl-water-translator").getByRole("textbox", { name });
  await field("depleted").fill("50");
  await field("depleted").press("Enter");
  // 8 to 20 kPa in sand is about half of what it holds to 1500 kPa: Agriculture Victoria, readily available water, from memory.
  await expect.poll(async () => Number(await field("kPa").inputValue())).toBeGreaterThan(12);
  expect(Number(await field("kPa").inputValue())).toBeLessThan(35);
  const missing = Number(await field("mm missing").inputValue());
  await field("mm missing").fill(String(missing / 2));
  await field("mm missing").press("Enter");
  await expect.poll(async () => Number(await field("depleted").inputValue())).toBeCloseTo(25, 0);
});

test("units are chosen per kind of number and remembered on the device", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "section");
  await page.getByText("Units", { exact: true }).click();
  await page.getByRole("combobox", { name: "Water" }).selectOption("gal");
  await page.getByText("Units", { exact: true }).click();
  await page.getByRole("combobox", { name: "Depth", exact: true }).selectOption("in");
  await drawn(page, "section");
  expect(await page.locator("rl-window-bar svg").getAttribute("aria-label")).toMatch(/lends [\d.]+ in, [\d.]+ gal/);
  await page.goto(playground.url);
  const litres = page.getByLabel("Litres per tree and day");
  await litres.waitFor();
  // 133 L over 3.785 L per US gallon (NIST SP 811).
  expect(Number(await litres.inputValue())).toBeCloseTo(133 / 3.785, 0);
});
