import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openCompare, sentence, settled } from "./compare-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

/** Three days, so that six runs of the slow engine take seconds. */
const threeDays = "#v=1&span=3";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

const start = (page: Page) => page.getByRole("button", { name: /^Check .* with physics$/ });

test("physics checks the days shown beside the page: progress, traces, values, floors; a change makes it stale", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url + threeDays);
  await start(page).press("Enter");
  await page.getByRole("progressbar", { name: "Check with physics" }).waitFor();
  expect(page.workers()).toHaveLength(2);
  await page.getByText("6 runs in").waitFor({ timeout: 90_000 });
  // The browser tells of an ended worker a moment later.
  await expect.poll(() => page.workers().length).toBe(1);

  const figures = page.locator("rl-check-figure figure");
  await expect.poll(() => figures.count()).toBe(2);
  const [values, changes] = [figures.first().locator("table").first(), figures.first().locator("table").nth(1)];
  await expect.poll(() => values.locator("tbody tr").count()).toBe(5);
  await expect.poll(() => values.locator("tbody tr").first().locator("td").count()).toBe(9);
  for (const row of await changes.locator("tbody tr").all()) {
    const [fast, physics, apart, floor, within] = await row.locator("td").allTextContents();
    const [a, b, c, d] = [fast, physics, apart, floor].map((text) => Number(text!.replace("−", "-").replace(",", "")));
    // Shown to three digits each.
    expect(Math.abs(Math.abs(b! - a!) - c!)).toBeLessThanOrEqual(0.01 * (Math.abs(a!) + Math.abs(b!)) + 0.01);
    if (Math.abs(c! - d!) > 0.01 * d!) expect(within).toContain(c! < d! ? "within" : "beyond");
  }
  await expect.poll(() => page.locator("rl-storage-chart path.second").count()).toBe(6);
  expect(await page.locator("rl-storage-chart svg").first().getAttribute("aria-label")).toContain("By physics");

  await sentence(page, 2).getByLabel("Pulses in a run").selectOption("2");
  await settled(page);
  await expect.poll(() => page.locator("rl-check-figure figure.stale").count()).toBe(2);
  await page.getByText("From before your change; check again.").first().waitFor();
  expect(troubles).toEqual([]);
});

test("the check can be stopped, and a change ends it; the page answers meanwhile", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  await start(page).click();
  await page.getByRole("button", { name: "Stop" }).click();
  await page.getByText("Stopped.").waitFor();
  await expect.poll(() => page.workers().length).toBe(1);
  await start(page).click();
  await sentence(page, 2).getByLabel("Pulses in a run").selectOption("2");
  await page.getByText("Stopped.").waitFor();
  await settled(page);
  await expect.poll(() => page.workers().length).toBe(1);
});

test("a run for which the slow engine finds no balance is said to have failed, and is held against nothing", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url + threeDays);
  await start(page).click();
  await page.getByText("6 runs in").waitFor({ timeout: 90_000 });
  await page
    .locator("rl-check-figure")
    .first()
    .evaluate(async (element) => {
      const figure = element as unknown as {
        check: {
          answer: { physics: { status: object; programmeName: string }[]; differences: { from: string; to: string }[] };
        };
        updateComplete: Promise<unknown>;
      };
      const { answer } = figure.check;
      const [first, ...others] = answer.physics;
      const failed = { ...first!, status: { kind: "failed", hour: 5, message: "no balance" } };
      const differences = answer.differences.filter((d) => d.from !== failed.programmeName);
      figure.check = { ...figure.check, answer: { ...answer, physics: [failed, ...others], differences } };
      await figure.updateComplete;
    });
  const figure = page.locator("rl-check-figure figure").first();
  await expect
    .poll(() => figure.textContent())
    .toMatch(/A failed: Richards’ equation found no balance at \d+ Jan, 05:00/);
  await expect.poll(() => figure.locator("rl-hours-chart").count()).toBe(5);
  await expect.poll(() => figure.locator("table").nth(1).locator("tbody tr").count()).toBe(5);
});
