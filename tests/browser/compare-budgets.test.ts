import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openCompare, sentence, settled } from "./compare-page.js";
import { type Opened, openPlayground } from "./open-playground.js";
import { shareOf as at, tasksIn } from "./page-tasks.js";

const dist = fileURLToPath(new URL("../../playground/dist", import.meta.url));
const firstLoadKB = 200;
/** Longest task of the page's own thread while it is used, ms. */
const longestTaskMs = 50;

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

test(`the first load is at most ${firstLoadKB} kB, compressed`, async () => {
  const { page } = await playground.newPage({ serviceWorkers: "block" });
  const asked = new Set<string>();
  page.context().on("request", (request) => asked.add(new URL(request.url()).pathname.slice(1)));
  await openCompare(page, playground.url);
  const sizes = [...asked].map((path) => {
    const content = readFileSync(join(dist, path === "" ? "index.html" : path));
    return { path, bytes: /\.(woff2|png)$/.test(path) ? content.length : gzipSync(content, { level: 9 }).length };
  });
  const bytes = sizes.reduce((sum, file) => sum + file.bytes, 0);
  console.log(`first load, kB compressed: ${(bytes / 1000).toFixed(1)} in ${sizes.length} files`);
  expect(sizes.some(({ path }) => path.includes("worker"))).toBe(true);
  expect(bytes).toBeLessThanOrEqual(firstLoadKB * 1000);
});

test(`no task blocks the page for more than ${longestTaskMs} ms while a change is computed and time plays`, async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  const browser = page.context().browser();
  if (!browser) throw new Error(`the trace needs ${chromium.name()}`);
  await page.evaluate(watchLongTasks);
  await browser.startTracing(page, { categories: ["toplevel", "devtools.timeline"] });
  await sentence(page, 2).getByLabel("Pulses in a run").selectOption("2");
  await settled(page);
  await page.getByRole("button", { name: "Play" }).click();
  await page.waitForTimeout(1500);
  await page.getByRole("button", { name: "Pause" }).click();
  for (const name of ["rl-difference-figure", "rl-soil-more", "rl-window-figure"]) {
    await page.locator(name).first().scrollIntoViewIfNeeded();
    await page.locator(name).first().locator("h2, h3").first().waitFor();
  }
  const tasks = tasksIn((await browser.stopTracing()).toString());
  expect(tasks.length).toBeGreaterThan(50);
  console.log(
    `page thread, ms of its own time: p50 ${at(tasks, 0.5)}, p95 ${at(tasks, 0.95)}, longest ${at(tasks, 1)}`,
  );
  const long = await page.evaluate(() => (globalThis as unknown as { longTasks: number[] }).longTasks);
  console.log(
    `long tasks as the page itself sees them, ms by the clock: ${long.length === 0 ? "none" : long.join(", ")}`,
  );
  expect(at(tasks, 1)).toBeLessThanOrEqual(longestTaskMs);
});

/** Lets the page note its own long tasks; by the clock, so other work on the machine lengthens them. Runs in the browser. */
function watchLongTasks(): void {
  const found: number[] = [];
  (globalThis as unknown as { longTasks: number[] }).longTasks = found;
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) found.push(Math.round(duration));
  }).observe({ entryTypes: ["longtask"] });
}
