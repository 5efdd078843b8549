import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openPage } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

const lesson = (page: Page) => page.locator("rl-class-page");
const stage = (page: Page) => page.locator("rl-class-page .stage");
const computed = (page: Page) => page.locator("rl-class-page .answer").waitFor({ timeout: 90_000 });

test("a quiz by keyboard alone: votes are counted, the soil stays hidden until it is dug, the answer until it is revealed", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "class");
  await stage(page).focus();
  await page.keyboard.press("1");
  await page.keyboard.press("2");
  await page.keyboard.press("2");
  expect(
    await page.getByRole("group", { name: "Votes of the class" }).getByRole("button").nth(1).textContent(),
  ).toContain(": 2");
  expect(await page.locator("rl-section-chart").count()).toBe(0);
  const before = await lesson(page).evaluate((element) => element.shadowRoot?.textContent ?? "");
  expect(before).not.toMatch(/airless; |without air, the right/);
  await page.getByRole("button", { name: "Dig with the spade" }).click();
  await expect.poll(() => page.locator("rl-section-chart").count(), { timeout: 60_000 }).toBe(2);
  await stage(page).focus();
  await page.keyboard.press("Space");
  await computed(page);
  const airless = await page.locator("rl-class-page figure p").allTextContents();
  expect(airless[0]).toMatch(/[1-9]\d*% of roots airless/);
  expect(airless[1]).toMatch(/none of roots airless; [1-9]\d*% thirsty/);
  await page.keyboard.press("r");
  expect(await page.locator("rl-class-page .answer").count()).toBe(0);
  expect(troubles).toEqual([]);
});

test("one slider: the guess is drawn, the knee appears, a point is frozen beside the present one", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "class", "&lesson=run-length-clay");
  await stage(page).focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press("ArrowRight");
  await page.locator("rl-class-page", { hasText: "The class guesses 5 h." }).waitFor();
  expect(await page.locator("rl-sweep-chart").count()).toBe(0);
  await page.keyboard.press("Space");
  await computed(page);
  await page.locator("rl-sweep-chart .guess").first().waitFor({ state: "attached" });
  const values = async (chart: number): Promise<number[][]> =>
    page
      .locator("rl-sweep-chart")
      .nth(chart)
      .evaluate((element) => {
        const { data } = element as unknown as { data: { columns: { values: number[] }[] } };
        return data.columns.map((column) => column.values);
      });
  const airless = await values(0);
  for (const column of airless) {
    expect(column.at(-1)!).toBeGreaterThan(column[0]!);
    for (const [i, value] of column.entries()) expect(value).toBeGreaterThanOrEqual((column[i - 1] ?? 0) - 1);
  }
  await page.keyboard.press("f");
  await page.keyboard.press("ArrowLeft");
  await page.locator("rl-class-page h2", { hasText: "Frozen: 5 h" }).waitFor();
  await page.locator("rl-class-page h2", { hasText: "Now: 4 h" }).waitFor();
  await page.keyboard.press("n");
  await page.locator("rl-class-page h1", { hasText: "one to eight pulses" }).waitFor();
  expect(troubles).toEqual([]);
});

test("every lesson is computed without a fault", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "class");
  const names = await page
    .getByLabel("Lesson:")
    .locator("option")
    .evaluateAll((all) => all.map((o) => (o as HTMLOptionElement).value));
  expect(names.length).toBeGreaterThanOrEqual(8);
  for (const name of names) {
    await page.getByRole("combobox", { name: "Lesson:" }).selectOption(name);
    await page.getByRole("button", { name: "Reveal" }).click();
    await computed(page);
    expect(await page.locator("rl-class-page .failed").count()).toBe(0);
  }
  expect(troubles).toEqual([]);
});

test("a trainer's own lesson opens; a broken one says what is wrong and changes nothing", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "class");
  const choose = (content: object) =>
    page
      .getByLabel("Open a lesson file of your own")
      .setInputFiles({ name: "mine.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(content)) });
  await choose({ format: 1, id: "mine", title: "Mine", colour: "red" });
  await page.locator("rl-class-page .failed", { hasText: "not a lesson" }).waitFor();
  expect(await page.locator("rl-class-page ul").textContent()).toContain("question");
  const loam = {
    soil: { name: "loam", horizons: [{ toCm: 100, texture: "loam" }] },
    season: { startDate: "2026-01-02", days: 2 },
  };
  await choose({
    format: 1,
    id: "mine",
    title: "Mine",
    question: "How wet?",
    predict: { kind: "point" },
    scenario: loam,
    columns: [{ name: "Loam", change: {} }],
    points: [{ label: "1", change: {} }],
    pictures: ["storage"],
    measures: ["airless"],
    hour: 12,
    reveal: "So wet.",
    key: "See.",
  });
  await page.locator("rl-class-page h1", { hasText: "Mine" }).waitFor();
  await page.getByRole("button", { name: "Reveal" }).click();
  await computed(page);
  await page.getByRole("button", { name: "Handout" }).click();
  expect(await page.locator(".handout li").count()).toBeGreaterThanOrEqual(9);
  expect(await page.locator(".handout .key").count()).toBe(0);
  await page.getByLabel("with the key").check();
  expect(await page.locator(".handout .key").count()).toBeGreaterThanOrEqual(9);
});
