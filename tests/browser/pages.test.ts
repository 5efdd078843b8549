import axe from "axe-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openPage, visibleTexts } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

const pages = ["section", "block", "truth", "class", "sheet"] as const;

/** Words that an English page cannot do without. */
const englishWords =
  /\b(the|of|and|with|from|roots|thirsty|airless|water|rain|days|hours|weekly|daily|floor|season|smallest|matters)\b/i;

test.each(pages)(
  "%s: a phone and a laptop, dark and light, in two languages, without a fault that axe can see",
  async (name) => {
    for (const { width, scheme, link } of [
      { width: 390, scheme: "dark", link: "&lang=es" },
      { width: 1280, scheme: "dark", link: "&lang=es" },
      { width: 1280, scheme: "light", link: "" },
    ] as const) {
      const opened = await playground.newPage({
        viewport: { width, height: 900 },
        colorScheme: scheme,
        bypassCSP: true,
      });
      const { page, troubles } = opened;
      await openPage(page, playground.url, name, link);
      for (const summary of await page.locator("rl-number-table summary:visible").all()) await summary.click();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      if (link !== "") {
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
      await page.context().close();
    }
  },
);

test("pages are links: the address names them, back returns, and the keyboard alone gets there", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "section", "&soil=1");
  await page.getByRole("link", { name: "Compare" }).press("Enter");
  await page.locator("rl-compare-page").waitFor();
  expect(page.url()).toContain("soil=1");
  expect(page.url()).not.toContain("page=");
  expect(await page.getByRole("link", { name: "Compare" }).getAttribute("aria-current")).toBe("page");
  await page.goBack();
  await page.locator("rl-section-page h1", { hasText: "Sand" }).waitFor();
  expect(await page.title()).toContain("hour by hour");
});
