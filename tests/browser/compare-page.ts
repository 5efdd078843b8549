import type { Locator, Page } from "playwright";
import type { Result } from "rootledger";

/** The page opened at an address and waited for until the season is drawn. */
export async function openCompare(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await settled(page);
}

/** Waits until the newest change has been computed and every chart that has room is drawn. */
export async function settled(page: Page): Promise<void> {
  await page.waitForFunction(
    () => {
      const compare = document.querySelector("rl-shell")?.shadowRoot?.querySelector("rl-compare-page") as unknown as
        | { season?: unknown; stale: boolean; shadowRoot: ShadowRoot }
        | undefined;
      if (compare?.season === undefined || compare.stale) return false;
      const rows = [...compare.shadowRoot.querySelectorAll("rl-soil-row")];
      const charts = rows.map((row) => [
        ...(row.shadowRoot?.querySelectorAll("rl-section-chart, rl-storage-chart, rl-hours-chart, rl-falls-chart") ??
          []),
      ]);
      const drawn = (chart: Element): boolean =>
        chart.clientWidth === 0 || chart.shadowRoot?.querySelector("svg") != null;
      return rows.length > 0 && charts.every((of) => of.length > 0 && of.every(drawn));
    },
    undefined,
    { timeout: 60_000 },
  );
}

/** Measures of one arm as the page holds them. */
export function measuresOn(page: Page, arm: number): Promise<Record<string, number>> {
  return page.evaluate((index) => {
    const compare = document.querySelector("rl-shell")?.shadowRoot?.querySelector("rl-compare-page") as unknown as {
      season: { result: { arms: { result: Result }[] } };
    };
    const { measures } = compare.season.result.arms[index]!.result;
    return Object.fromEntries(measures.map(({ id, values }) => [id, values[0]!]));
  }, arm);
}

export const sentence = (page: Page, programme: number): Locator =>
  page.locator("rl-programme-sentence").nth(programme);
export const slider = (page: Page): Locator => page.getByRole("slider", { name: "Hour shown in every picture" });

/** All text inside an element of the page's own. */
export const shadowText = (element: Locator): Promise<string> =>
  element.evaluate((of) => of.shadowRoot?.textContent?.replace(/\s+/g, " ").trim() ?? "");
