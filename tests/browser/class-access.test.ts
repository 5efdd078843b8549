import axe from "axe-core";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { press, reveal, stage } from "./class-room.js";
import { openPage, visibleTexts } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

const faults = async (page: Page): Promise<string[]> => {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run();
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
  });
};

const lessons = 11;
const englishWords = /\b(the|of|and|with|from|roots|thirsty|airless|water|rain|days|hours|soil|lesson|must|below)\b/i;

test.each([
  { width: 390, scheme: "dark", link: "&lang=es", handout: "Hoja de trabajo", withKey: "con la clave" },
  { width: 1280, scheme: "light", link: "", handout: "Handout", withKey: "with the key" },
] as const)(
  "every lesson revealed, its switch on, its handout: $width px, $scheme, no fault that axe can see, nothing wider than the page",
  { timeout: 500_000 },
  async ({ width, scheme, link, handout, withKey }) => {
    const { page, troubles } = await playground.newPage({
      viewport: { width, height: 900 },
      colorScheme: scheme,
      bypassCSP: true,
    });
    await openPage(page, playground.url, "class", link);
    for (let i = 0; i < lessons; i++) {
      await reveal(page);
      await press(page, "s", "ArrowRight");
      const lesson = (await page.locator("rl-class-page h1").textContent()) ?? "";
      const drawn = page
        .locator("rl-class-page .stage")
        .locator(
          "rl-section-chart, rl-storage-chart, rl-leak-chart, rl-damage-chart, rl-window-bar, rl-pulse-air-chart, rl-row-plan",
        );
      await expect.poll(() => drawn.first().locator("svg").first().isVisible(), { message: lesson }).toBe(true);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), lesson).toBeLessThanOrEqual(width);
      expect(await faults(page), lesson).toEqual([]);
      if (link !== "") {
        const texts = await page.evaluate(visibleTexts);
        expect(
          texts.filter((text) => englishWords.test(text)),
          lesson,
        ).toEqual([]);
      }
      await stage(page).focus();
      await press(page, "n");
    }
    await page.locator("rl-lesson-shelf details summary").click();
    await page.locator("rl-lesson-shelf input[type=file]").setInputFiles({
      name: "m.json",
      mimeType: "application/json",
      buffer: Buffer.from('{"format": 2, "id": "A"}'),
    });
    await page.locator("rl-lesson-shelf .failed").waitFor();
    expect(await faults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await page.getByRole("button", { name: handout }).click();
    await page.getByLabel(withKey).check();
    expect(await faults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(troubles).toEqual([]);
  },
);
