import { afterAll, beforeAll, expect, test } from "vitest";
import { openCompare, sentence, settled, slider } from "./compare-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

test("one hand of time by keyboard moves every picture", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  const hand = slider(page);
  const captions = () =>
    page.locator("rl-section-chart svg").evaluateAll((all) => all.map((svg) => svg.getAttribute("aria-label")));
  const before = await captions();
  await hand.focus();
  const start = Number(await hand.inputValue());
  await page.keyboard.press("ArrowRight");
  await expect.poll(async () => Number(await hand.inputValue())).toBe(start + 1);
  await page.keyboard.press("PageUp");
  await expect.poll(async () => Number(await hand.inputValue())).toBe(start + 1 - 24);
  expect(await hand.getAttribute("aria-valuetext")).toMatch(/Jan, \d\d:00$/);
  await page.keyboard.press("End");
  await expect.poll(async () => Number(await hand.inputValue())).toBe(84 * 24 - 1);
  await expect.poll(async () => (await captions()).filter((text, i) => text !== before[i]).length).toBe(6);
  await page.waitForFunction(() => location.hash.includes("hour=2015"));
});

test("play moves the hand; with reduced motion four hours stand side by side instead", async () => {
  const moving = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(moving.page, playground.url);
  const start = Number(await slider(moving.page).inputValue());
  await moving.page.getByRole("button", { name: "Play" }).press("Space");
  await expect.poll(async () => Number(await slider(moving.page).inputValue())).toBeGreaterThan(start + 3);
  await moving.page.getByRole("button", { name: "Pause" }).press("Space");
  const still = await playground.newPage({ viewport: { width: 1280, height: 900 }, reducedMotion: "reduce" });
  await openCompare(still.page, playground.url);
  expect(await still.page.getByRole("button", { name: "Play" }).count()).toBe(0);
  await still.page.getByRole("button", { name: "Four hours" }).click();
  await expect.poll(() => still.page.locator("rl-section-chart").count()).toBe(24);
});

test("every picture has a title, a summary for the ear and a table of its numbers", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  const figures = page.locator("rl-soil-row figure:is(.section, .storage, .hours)");
  await expect.poll(() => figures.count()).toBe(6);
  for (const figure of await figures.all()) {
    expect((await figure.locator("h3").first().textContent())?.length).toBeGreaterThan(20);
    await expect.poll(() => figure.locator("svg[role=img][aria-label]").count()).toBeGreaterThanOrEqual(3);
    await figure.locator("summary").first().click();
    await expect.poll(() => figure.locator("table tbody tr").count()).toBeGreaterThanOrEqual(3);
  }
});

test("a bad field of a link falls back and is named; a bad link never breaks the page", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, `${playground.url}#v=1&a.pulses=many&soil2=loam&tune=3&hour=-4&%%%`);
  const faults = page.locator("rl-model-status .failed");
  await expect.poll(() => faults.textContent()).toContain("a whole number from 1 to 24");
  await expect.poll(() => faults.textContent()).toContain("“tune” is not a setting");
  await expect.poll(() => page.locator("rl-soil-row h2 > .ear").nth(1).textContent()).toBe("Loam");
  await faults.getByRole("button", { name: "Close" }).click();
  await expect.poll(() => faults.count()).toBe(0);
  expect(troubles).toEqual([]);
});

test("what cannot be computed says why, keeps the last pictures and can be undone", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  await sentence(page, 0).getByLabel("Days from run to run").selectOption("1");
  await settled(page);
  await page.getByLabel("Litres per tree and day").fill("900");
  await page.getByLabel("Litres per tree and day").press("Enter");
  const failed = page.locator("rl-model-status .failed");
  await failed.waitFor();
  await expect.poll(() => failed.textContent()).toMatch(/overlap/);
  await expect.poll(() => failed.textContent()).toContain("from before your change");
  await expect.poll(() => page.locator("rl-section-chart canvas").count()).toBe(6);
  await expect.poll(() => page.locator(".rail.stale").count()).toBe(2);
  await failed.getByRole("button", { name: "Undo the last change" }).click();
  await settled(page);
  await expect.poll(() => failed.count()).toBe(0);
  await expect.poll(() => page.locator(".rail.stale").count()).toBe(0);
});
