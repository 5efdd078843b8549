import type { Locator, Page } from "playwright";
import { expect } from "vitest";

/** Half of A4 is 148.5 mm high and 210 mm wide; with a margin of 12 mm on top and at the sides this is left, at 96 px to the inch. */
const printable = { widthPx: (186 / 25.4) * 96, heightPx: (136.5 / 25.4) * 96 };
/** The smallest type that is read on paper without glasses: 9 pt, our choice. */
const smallestPx = (9 / 72) * 96;

/** The sheet in print, on the width of a page: no higher than half of it, no type below 9 pt. */
export async function expectHalfPage(page: Page, sheet: Locator): Promise<void> {
  const before = page.viewportSize()!;
  await page.setViewportSize({ width: Math.floor(printable.widthPx), height: 1000 });
  await page.emulateMedia({ media: "print" });
  const { width, height } = (await sheet.boundingBox())!;
  const smallest = await sheet.evaluate((element) =>
    Math.min(...[...element.querySelectorAll("*")].map((e) => Number.parseFloat(getComputedStyle(e).fontSize))),
  );
  expect(width).toBeLessThanOrEqual(printable.widthPx);
  expect(height).toBeLessThanOrEqual(printable.heightPx);
  expect(smallest).toBeGreaterThanOrEqual(smallestPx - 0.01);
  await page.emulateMedia({ media: "screen" });
  await page.setViewportSize(before);
}
