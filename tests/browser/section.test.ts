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
  await expect
    .poll(() => list.first().textContent())
    .toMatch(/13 Jan, 07:00, 20 cm: read 4\.5 kPa; the model says [\d.]+ kPa/);
  await page.locator("rl-trace-chart .reading").waitFor();
  await page.waitForFunction(() => location.hash.includes("readings=1039-20-4.5"));
  await expect.poll(() => page.locator("rl-readings-list .verdict").textContent()).toContain("lacks air");
  await page.reload();
  await drawn(page, "section");
  await expect.poll(() => list.count()).toBe(1);
  await list.first().getByRole("button").click();
  await expect.poll(() => list.count()).toBe(0);
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
  await expect.poll(async () => Number(await field("kPa").inputValue())).toBeLessThan(35);
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
  await expect.poll(async () => Number(await litres.inputValue())).toBeCloseTo(133 / 3.785, 0);
});

/** Three days of a logger from 12 January on, one cell of which is no number. */
const logger = [
  "timestamp,soil tension 20 cm (kPa),soil tension 50 cm (kPa)",
  ...Array.from({ length: 72 }, (_, hour) => {
    const day = `2026-01-${12 + Math.floor(hour / 24)}`;
    return `${day} ${String(hour % 24).padStart(2, "0")}:00,${hour === 10 ? "oops" : 4 + (hour % 5)},3`;
  }),
].join("\n");

test("a logger's file is asked about by line, shown as it was understood, drawn on the lines and kept over a reload", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "section", "&hour=1039");
  const drop = page.locator("rl-sensor-drop");
  await drop
    .getByLabel("Drop a file of a logger")
    .setInputFiles({ name: "pit-two.csv", mimeType: "text/csv", buffer: Buffer.from(logger) });
  await drop.getByText("line 12: oops").waitFor();
  await drop.locator(".failed button").first().click();
  await drop.getByText("Understood: 72 records").waitFor();
  expect(await page.locator("rl-trace-chart .logged").count()).toBe(0);
  await drop.getByRole("button", { name: "Draw these 143 readings at 20 cm and 50 cm" }).click();
  await page.locator("rl-trace-chart .logged").waitFor();
  await expect.poll(() => drop.getByText("143 of 143 readings fall in this season").count()).toBe(1);
  await expect
    .poll(() => page.locator("rl-section-page .traces").textContent())
    .toMatch(/off by a factor of [\d.]+ at the middle/);
  await page.reload();
  await drawn(page, "section");
  await page.locator("rl-trace-chart .logged").waitFor();
  await drop.getByRole("button", { name: "Take them off" }).click();
  await expect.poll(() => page.locator("rl-trace-chart .logged").count()).toBe(0);
  await drop
    .getByLabel("Drop a file of a logger")
    .setInputFiles({ name: "x.csv", mimeType: "text/csv", buffer: Buffer.from([0x50, 0x4b, 3, 4, 0, 0]) });
  await drop.getByText("This file cannot be used: x.csv").waitFor();
  expect(troubles).toEqual([]);
});
