import axe from "axe-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openCompare } from "./compare-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

const views = [
  { name: "phone", width: 390, height: 844, link: "", scheme: "light" },
  { name: "laptop", width: 1280, height: 800, link: "", scheme: "light" },
  { name: "laptop", width: 1280, height: 800, link: "", scheme: "dark" },
  { name: "wall", width: 1920, height: 1080, link: "#v=1&wall=1", scheme: "dark" },
  { name: "bad link", width: 1280, height: 800, link: "#v=1&a.pulses=many", scheme: "light" },
] as const;

test.each(views)("axe finds nothing on the drawn page: $name, $scheme", async ({ width, height, link, scheme }) => {
  const { page } = await playground.newPage({ viewport: { width, height }, colorScheme: scheme, bypassCSP: true });
  await openCompare(page, playground.url + link);
  for (const summary of await page.locator("rl-number-table summary:visible").all()) await summary.click();
  await page.evaluate(axe.source);
  const faults = await page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run();
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
  });
  expect(faults).toEqual([]);
});

test.each([390, 1280, 1920])("nothing sticks out sideways at %i px", async (width) => {
  const { page } = await playground.newPage({ viewport: { width, height: 900 } });
  await openCompare(page, playground.url);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
});
