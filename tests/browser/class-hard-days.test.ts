import { afterAll, beforeAll, expect, test } from "vitest";
import { openLesson, press, reveal, stage, sweep } from "./class-room.js";
import { openPage } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";
import { shareOf, tasksIn } from "./page-tasks.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

/** Own time of the page's thread for one move of the slider, and of its longest task, ms. */
const moveBudgetMs = 100;
const longestTaskMs = 50;
const moves = 44;

test("moving the slider: every point is there before it is asked for; time to the picture printed, no long task", async () => {
  const { page, troubles } = await openLesson(playground, "run-length-clay");
  await reveal(page);
  const browser = page.context().browser();
  if (!browser) throw new Error("the trace needs a browser");
  await browser.startTracing(page, { categories: ["toplevel", "devtools.timeline"] });
  const clockMs = await page.evaluate(async (count) => {
    const root = document.querySelector("rl-shell")?.shadowRoot?.querySelector("rl-class-page")?.shadowRoot;
    const stage = root?.querySelector<HTMLElement>(".stage");
    const slider = root?.querySelector<HTMLInputElement>("input[type=range]");
    if (!stage || !slider) throw new Error("no lesson");
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    const out: number[] = [];
    for (let i = 0; i < count; i++) {
      const key = Math.floor(i / 11) % 2 === 0 ? "ArrowRight" : "ArrowLeft";
      const before = slider.value;
      await frame();
      const began = performance.now();
      stage.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, composed: true }));
      await frame();
      await frame();
      out.push(performance.now() - began);
      if (slider.value === before) throw new Error(`the slider stayed at ${before} on move ${i}`);
    }
    return out.sort((a, b) => a - b);
  }, moves);
  const tasks = tasksIn((await browser.stopTracing()).toString());
  const perMoveMs = tasks.reduce((sum, ms) => sum + ms, 0) / moves;
  console.log(
    `lesson slider: ${perMoveMs.toFixed(0)} ms of the page's own time a move (budget ${moveBudgetMs}), longest task ${shareOf(tasks, 1)} ms (budget ${longestTaskMs}); by the clock p50 ${shareOf(clockMs, 0.5)} ms, p95 ${shareOf(clockMs, 0.95)} ms`,
  );
  expect(perMoveMs).toBeLessThan(moveBudgetMs);
  expect(shareOf(tasks, 1)).toBeLessThanOrEqual(longestTaskMs);
  expect(troubles).toEqual([]);
});

test("newest wins: skipping through lessons leaves the numbers of the one on screen", async () => {
  const { page, troubles } = await openLesson(playground, "interval");
  await press(page, "n", "n", "p", "p", "p", "n", "n");
  await page.locator("rl-class-page h1", { hasText: "A young tree" }).waitFor();
  await reveal(page);
  expect((await sweep(page, "Litres on nothing"))[0]).toHaveLength(6);
  expect(troubles).toEqual([]);
});

test("the worker dies: the votes stay, the page says what to do, and one key computes again", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 800 } });
  let broken = true;
  await page.route(/sweep-run.*\.js|compare\.worker.*\.js/, (route) => (broken ? route.abort() : route.continue()));
  await page.goto(`${playground.url}#v=1&page=class&lesson=wilting-tree`);
  await stage(page).focus();
  await press(page, "2", "2");
  const failed = page.locator("rl-class-page .stage .failed");
  await failed.waitFor({ timeout: 60_000 });
  await expect.poll(() => failed.textContent()).toMatch(/Votes, guess and lesson are still here|could not be computed/);
  await expect
    .poll(() => page.getByRole("group", { name: "Votes of the class" }).textContent())
    .toContain("right dry: 2");
  broken = false;
  await page.getByRole("button", { name: "Compute again" }).press("Enter");
  await reveal(page);
  await expect
    .poll(() => page.getByRole("group", { name: "Votes of the class" }).textContent())
    .toContain("right dry: 2");
});

test("without internet: a page seen once opens its lessons, computes them and prints the handout", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 800 } });
  await openPage(page, playground.url, "compare");
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    await new Promise<void>((done) => {
      if (active?.state === "activated") done();
      else active?.addEventListener("statechange", () => active.state === "activated" && done());
    });
  });
  await page.context().setOffline(true);
  await openPage(page, playground.url, "class", "&lesson=small-rain");
  await reveal(page);
  const [kept, skipped] = await sweep(page, "Salt round the roots");
  expect(skipped![1]).toBeGreaterThan(skipped![0]!);
  for (let i = 1; i < 7; i++) expect(kept![i]).toBeLessThan(kept![i - 1]!);
  const [drank, drankSkipped] = await sweep(page, "Water drunk on the day shown");
  expect(drankSkipped![1]! / drank![1]!).toBeLessThan(0.72);
  expect(skipped![5]).toBeLessThan(skipped![0]!);
  expect(drankSkipped![5]! / drank![5]!).toBeGreaterThan(0.92);
  await press(page, "n");
  await reveal(page);
  const [byWater, byHand] = await sweep(page, "Nitrogen the tree took");
  expect(byWater![0]).toBeGreaterThan(18);
  expect(byWater!.at(-1)).toBeLessThan(11);
  expect(Math.max(...byHand!)).toBeLessThan(2);
  const [leached, leachedByHand] = await sweep(page, "Nitrogen below the roots");
  expect(leached!.at(-1)).toBeGreaterThan(6);
  expect(leachedByHand!.at(-1)).toBeLessThan(1);
  await page.getByRole("button", { name: "Handout" }).press("Enter");
  await page.locator("article.handout").waitFor();
  expect(troubles).toEqual([]);
});
