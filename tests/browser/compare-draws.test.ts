import axe from "axe-core";
import type { Page } from "playwright";
import type { EnsembleResult } from "rootledger/chance";
import type { ComparisonResult } from "rootledger/compare";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openCompare, sentence, settled } from "./compare-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

const laptop = { viewport: { width: 1280, height: 900 } };
const start = (page: Page) => page.getByRole("button", { name: "Draw what is unknown" });
const figures = (page: Page) => page.locator("rl-difference-figure figure");

/** The draws' result as the page holds it. */
const drawn = (page: Page): Promise<EnsembleResult> =>
  page.evaluate(() => {
    const compare = document.querySelector("rl-shell")?.shadowRoot?.querySelector("rl-compare-page") as unknown as {
      draws: { answer: { result: EnsembleResult } };
    };
    return compare.draws.answer.result;
  });

test("the strip shows every difference with its zero line and floor before anything is drawn, and the numbers as a table", async () => {
  const { page, troubles } = await playground.newPage({ ...laptop, bypassCSP: true });
  await openCompare(page, playground.url);
  await page.locator("rl-difference-figure").first().scrollIntoViewIfNeeded();
  await page.locator("rl-difference-strip svg").nth(3).waitFor();
  await expect.poll(() => figures(page).count()).toBe(2);
  const strips = page.locator("rl-difference-strip svg");
  await expect.poll(() => strips.count()).toBe(4);
  for (const strip of await strips.all()) {
    await expect.poll(() => strip.locator("line.zero").count()).toBe(5);
    await expect.poll(() => strip.locator("line.floor").count()).toBe(10);
    await expect.poll(() => strip.locator("circle").count()).toBe(5);
    expect(await strip.locator("rect.band").count()).toBe(0);
    expect(await strip.getAttribute("aria-label")).toMatch(
      /Water lost below the roots: [+−]?[\d,.]+ L; floor [\d,.]+: /,
    );
  }
  // What is hollow says so, and what is filled lies beyond its floor's posts.
  const inside = await page.evaluate(() => {
    const walk = (root: ParentNode): Element[] =>
      [...root.querySelectorAll("*")].flatMap((e) => [e, ...(e.shadowRoot ? walk(e.shadowRoot) : [])]);
    return walk(document)
      .filter((e) => e.localName === "rl-difference-strip")
      .flatMap((e) => {
        const posts = [...e.shadowRoot!.querySelectorAll("line.floor")].map((l) => Number(l.getAttribute("x1")));
        return [...e.shadowRoot!.querySelectorAll("circle")].map((c, i) => {
          const x = Number(c.getAttribute("cx"));
          return { clear: c.classList.contains("clear"), within: posts[2 * i]! <= x && x <= posts[2 * i + 1]! };
        });
      });
  });
  expect(inside).toHaveLength(20);
  for (const { clear, within } of inside) expect(clear).toBe(!within);
  const table = figures(page).first().locator("rl-number-table").first();
  await table.locator("summary").click();
  await expect.poll(() => table.locator("tbody tr").count()).toBe(5);
  await expect.poll(() => table.locator("thead th").count()).toBe(8);
  await page.evaluate(axe.source);
  const faults = await page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run();
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
  });
  expect(faults).toEqual([]);
  expect(troubles).toEqual([]);
});

test("draws run in helpers beside the page, fill the strip as they come, can be stopped, and a change makes them stale", async () => {
  const { page, troubles } = await playground.newPage(laptop);
  await openCompare(page, playground.url);
  await start(page).press("Enter");
  await page.getByRole("progressbar", { name: "Draw what is unknown" }).waitFor();
  await page
    .getByText(/over \d+ draws/)
    .first()
    .waitFor({ timeout: 110_000 });
  await page.getByRole("button", { name: "Stop drawing" }).click();
  await page.getByText("Stopped. What was drawn is shown.").waitFor();
  // The browser tells of ended workers, helpers included, a moment later.
  await expect.poll(() => page.workers().length, { timeout: 30_000 }).toBe(1);
  const result = await drawn(page);
  expect(result.finished).toBeGreaterThanOrEqual(10);
  expect(result).toMatchObject({ failed: 0, status: "stopped", members: 100 });
  await expect.poll(() => page.locator("rl-difference-strip rect.band").count()).toBe(20);
  const label = await page.locator("rl-difference-strip svg").first().getAttribute("aria-label");
  expect(label).toContain("in nine draws of ten");
  const held = async (): Promise<string[]> => page.locator("rl-draws-control li").allTextContents();
  await expect.poll(held).toHaveLength(4);
  for (const text of await held()) expect(text).toMatch(new RegExp(`: in \\d+ of ${result.finished} draws$`));
  expect((await held()).find((text) => text.startsWith("Same water"))).toContain(`in ${result.finished} of`);
  // What the one run calls clear and the draws do not is no longer claimed, in sentences as in the strip.
  const claimed = await page.evaluate(() => {
    const compare = document.querySelector("rl-shell")?.shadowRoot?.querySelector("rl-compare-page") as unknown as {
      season: { result: ComparisonResult };
    };
    return compare.season.result.differences;
  });
  const told = ["thirsty", "airless", "transpiration", "below-roots", "evaporation"];
  const withdrawn = claimed.filter(
    (d) =>
      told.includes(d.measureId) &&
      d.tree === "mean" &&
      d.verdict !== "no clear difference" &&
      result.differences.some(
        ({ measureId, soil, tree, from, to, verdict }) =>
          [measureId, soil, tree, from, to].join() === [d.measureId, d.soil, d.tree, d.from, d.to].join() &&
          verdict !== d.verdict,
      ),
  );
  expect(withdrawn.length).toBeGreaterThan(0);
  await expect
    .poll(() => page.locator("rl-verdict-list li", { hasText: "the draws do not agree" }).count())
    .toBe(withdrawn.length);
  const pair = result.differences.find((d) => d.measureId === "below-roots")!;
  const rows = figures(page).first().locator("rl-number-table").first();
  await rows.locator("summary").click();
  await rows.locator("tbody tr").nth(3).waitFor();
  const cells = await rows.locator("tbody tr").nth(3).locator("td").allTextContents();
  expect(Number(cells[1]!.replace("−", "-").replace(/,/g, ""))).toBeCloseTo(pair.median, -1);
  expect(cells.at(-1)).toBe(pair.verdict);

  await sentence(page, 2).getByLabel("Pulses in a run").selectOption("2");
  await settled(page);
  await page.getByText("From before your change; draw again.").waitFor();
  await expect.poll(() => page.locator("rl-difference-strip rect.band").count()).toBe(0);
  expect(troubles).toEqual([]);
});
