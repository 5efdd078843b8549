import axe from "axe-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openCompare, settled } from "./compare-page.js";
import { visibleTexts } from "./open-page.js";
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

/** Words that an English page cannot do without. */
const englishWords =
  /\b(the|of|and|with|from|roots|thirsty|airless|water|rain|days|hours|weekly|daily|floor|season)\b/i;

test.each([
  { width: 390, scheme: "dark", language: "es" },
  { width: 1280, scheme: "light", language: "en" },
] as const)(
  "with every tool unfolded and every further figure drawn: $width px, $language",
  async (view) => {
    const { width, scheme, language } = view;
    const { page, troubles } = await playground.newPage({
      viewport: { width, height: 900 },
      colorScheme: scheme,
      bypassCSP: true,
    });
    const asked = [
      "#v=1&programmes=4&b.rule=tension&c.rule=depletion&d.rule=replace-use&a.again=13%3A00&a.every=1&a.lines=3",
      "power.from=22%3A00&power.to=08%3A00&skip.rain=5&need.et0=7.5&water.ec=1.2&drain=1",
      `lang=${language}`,
    ];
    await openCompare(page, `${playground.url}${asked.join("&")}`);
    await page.locator(".tools details").last().locator("summary").click();
    for (const folded of await page.locator("details.further > summary:visible").all()) await folded.click();
    for (const name of ["rl-soil-more >> nth=0", "rl-soil-more >> nth=1", "rl-window-figure", "rl-trees-figure"]) {
      await page.locator(name).scrollIntoViewIfNeeded();
      await page.locator(name).locator("h2, h3").first().waitFor({ timeout: 60_000 });
    }
    await page.locator("rl-trees-figure table").first().waitFor({ timeout: 200_000 });
    await page.locator("rl-limits-control .cuts li").first().waitFor();
    await settled(page);
    await expect.poll(() => page.locator("rl-limits-control .cuts li").count()).toBe(8);
    await expect.poll(() => page.locator("rl-soil-more .salt svg").count()).toBe(2);
    for (const summary of await page.locator("rl-number-table summary:visible").all()) await summary.click();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    if (language === "es") {
      const texts = await page.evaluate(visibleTexts);
      expect(texts.filter((text) => englishWords.test(text))).toEqual([]);
    }
    await page.evaluate(axe.source);
    const faults = await page.evaluate(async () => {
      const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run();
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
    });
    expect(faults).toEqual([]);
    expect(troubles).toEqual([]);
  },
  400_000,
);
