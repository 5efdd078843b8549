import type { Page } from "playwright";
import { openPage } from "./open-page.js";
import type { Opened, Watched } from "./open-playground.js";

/** A lesson on a laptop, its stage in focus. */
export async function openLesson(playground: Opened, id: string, rest = ""): Promise<Watched> {
  const watched = await playground.newPage({ viewport: { width: 1280, height: 800 } });
  await openPage(watched.page, playground.url, "class", `&lesson=${id}${rest}`);
  await stage(watched.page).focus();
  return watched;
}

export const stage = (page: Page) => page.locator("rl-class-page .stage");

export async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}

/** Reveals by the keyboard and waits until every point has been computed. */
export async function reveal(page: Page): Promise<void> {
  await stage(page).focus();
  await page.keyboard.press("Space");
  await page.locator("rl-class-page .answer:not(.early)").waitFor({ timeout: 110_000 });
}

/** What a sweep chart shows: by column, one value per point of the slider. */
export async function sweep(page: Page, measure: string): Promise<readonly (readonly number[])[]> {
  const charts = page.locator("rl-sweep-chart");
  await charts.first().waitFor({ state: "attached" });
  const all = await charts.evaluateAll((elements) =>
    elements.map(
      (e) => (e as unknown as { data: { measure: string; columns: { values: (number | undefined)[] }[] } }).data,
    ),
  );
  const data = all.find((d) => d.measure.startsWith(measure));
  if (!data) throw new Error(`no chart of ${measure}: ${all.map((d) => d.measure).join(", ")}`);
  return data.columns.map(({ values }) =>
    values.map((value) => {
      if (value === undefined) throw new Error(`${measure} lacks a value`);
      return value;
    }),
  );
}

/** Everything that can be read on the page of lessons, charts and names for the ear included. */
export const said = (page: Page): Promise<string> =>
  page.locator("rl-class-page").evaluate((element) => {
    const out: string[] = [];
    const walk = (node: Node): void => {
      if (node instanceof Element) {
        if (["STYLE", "SCRIPT"].includes(node.tagName)) return;
        for (const name of ["aria-label", "title"]) out.push(node.getAttribute(name) ?? "");
        for (const child of node.shadowRoot?.childNodes ?? []) walk(child);
      } else if (node.nodeType === Node.TEXT_NODE) out.push(node.textContent ?? "");
      for (const child of node.childNodes) walk(child);
    };
    walk(element);
    return out.join(" ").replace(/\s+/g, " ");
  });
