import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { settled } from "./compare-page.js";
import { drawn, openPage } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

const messy = (name: string) => fileURLToPath(new URL(`../../data/messy/${name}`, import.meta.url));

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

/** Twenty days of weather as a spreadsheet of decimal commas would save them. */
const twentyDays = [
  "date;tMinC;tMaxC;rainMm",
  ...Array.from(
    { length: 20 },
    (_, i) => `2024-07-${String(i + 1).padStart(2, "0")};12,5;${28 + (i % 4)},0;${i === 9 ? "14,2" : "0"}`,
  ),
].join("\n");

test("a weather file is shown as it was understood before it is used, kept over a reload, and given back", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "block");
  const drop = page.locator("rl-weather-drop");
  await drop
    .getByLabel("Drop a weather file")
    .setInputFiles({ name: "farm.csv", mimeType: "text/csv", buffer: Buffer.from(twentyDays) });
  await drop.getByText("Understood: 20 records").waitFor();
  await expect.poll(() => drop.getByText("Now: Valle Almagra").count()).toBe(1);
  // Nobody guesses on which half of the earth a file was written.
  await expect.poll(() => drop.getByLabel("Latitude").inputValue()).toBe("");
  await drop.getByRole("button", { name: "Use these 20 days from 2024-07-01" }).click();
  await drop.getByText("Type the latitude of the place first").waitFor();
  await expect.poll(() => drop.getByText("Now: Valle Almagra").count()).toBe(1);
  await drop.getByLabel("Latitude").fill("38,5");
  await drop.getByLabel("Latitude").press("Enter");
  await drop.getByRole("button", { name: "Use these 20 days from 2024-07-01" }).click();
  await drop.getByText("Now: farm.csv").waitFor();
  await page.getByRole("link", { name: "Compare" }).click();
  await settled(page);
  const rain = () =>
    page.evaluate(() => {
      const compare = document.querySelector("rl-shell")?.shadowRoot?.querySelector("rl-compare-page") as unknown as {
        season: { result: { arms: { result: { startDate: string; days: { rows: number } } }[] } };
      };
      const { startDate, days } = compare.season.result.arms[0]!.result;
      return `${startDate} ${days.rows}`;
    });
  expect(await rain()).toBe("2024-07-01 20");
  await page.reload();
  await settled(page);
  expect(await rain()).toBe("2024-07-01 20");
  await expect.poll(() => page.locator("rl-model-status .failed").count()).toBe(0);
  // A link says under which weather it was made; a device without it says so, and draws its own.
  const colleague = await playground.newPage();
  await openPage(
    colleague.page,
    playground.url,
    "compare",
    new URL(page.url()).hash.replace(/^#v=1(&page=compare)?/, ""),
  );
  await expect
    .poll(() => colleague.page.locator("rl-model-status .failed").textContent())
    .toMatch(/made under other weather, “farm\.csv 2024-07-01 20 d”, which is not on this device/);
  await page.getByRole("link", { name: "Block" }).click();
  await drop.getByRole("button", { name: "Back to the demo's weather" }).click();
  await expect.poll(() => new URL(page.url()).hash).not.toMatch(/weather=/);
  await drop.getByText("Now: Valle Almagra").waitFor();
  expect(troubles).toEqual([]);
});

test("a file that cannot be read says so with its lines, and what was there stays", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "block");
  const drop = page.locator("rl-weather-drop");
  await drop
    .getByLabel("Drop a weather file")
    .setInputFiles({ name: "x.csv", mimeType: "text/csv", buffer: Buffer.from([0x50, 0x4b, 3, 4, 0, 0, 9, 9]) });
  await drop.getByText("This file cannot be used: x.csv").waitFor();
  await drop.getByLabel("Drop a weather file").setInputFiles({
    name: "station.csv",
    mimeType: "text/csv",
    buffer: readFileSync(messy("real_metie_dublin_airport_1993-01_1993-03.csv")),
  });
  await drop.getByText(/Understood: [\d,]+ records/).waitFor();
  await expect.poll(() => drop.locator("tbody tr").count()).toBeGreaterThan(3);
  await expect.poll(() => drop.getByText("Now: Valle Almagra").count()).toBe(1);
  expect(troubles).toEqual([]);
});

test("figures and numbers leave the page as files that name their version", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "section");
  const taken = async (name: string): Promise<Buffer> => {
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name }).click()]);
    return readFileSync(await download.path());
  };
  expect((await taken("water chart as SVG")).toString()).toMatch(/^<svg[\s\S]*rootledger \d/);
  expect((await taken("section as PNG")).subarray(1, 4).toString()).toBe("PNG");
  const csv = (await taken("hours as CSV")).toString().split("\n");
  expect(csv[0]).toMatch(/^# rootledger \d/);
  expect(csv.length).toBe(2 + 84 * 24 + 1);
  const json = JSON.parse((await taken("all as JSON")).toString());
  expect(json.version).toMatch(/^\d/);
  expect(json.file.programmes).toHaveLength(3);
  expect(troubles).toEqual([]);
});

test("after the first visit the page opens without a network", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "section");
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.context().setOffline(true);
  await page.reload();
  await drawn(page, "section");
  await page.getByRole("link", { name: "Truth" }).click();
  await page.locator("rl-truth-page h1", { hasText: "published checks" }).waitFor();
  await page.getByRole("link", { name: "Class" }).click();
  await page.locator("rl-class-page h1").waitFor();
});

test("where storage is forbidden the page works and says what it cannot keep", async () => {
  const { page, troubles } = await playground.newPage({
    viewport: { width: 1280, height: 900 },
    serviceWorkers: "block",
  });
  await page.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get: () => {
        throw new DOMException("forbidden", "SecurityError");
      },
    });
  });
  await openPage(page, playground.url, "block");
  const drop = page.locator("rl-weather-drop");
  await drop
    .getByLabel("Drop a weather file")
    .setInputFiles({ name: "farm.csv", mimeType: "text/csv", buffer: Buffer.from(twentyDays) });
  await drop.getByLabel("Latitude").fill("38,5");
  await drop.getByLabel("Latitude").press("Enter");
  await drop.getByRole("button", { name: "Use these 20 days" }).click();
  await drop.getByText("no room to keep this file").waitFor();
  expect(troubles).toEqual([]);
});
