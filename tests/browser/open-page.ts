import type { Page } from "playwright";

/** Any page of the playground, opened by its link and waited for: its own element is there, and the season where it needs one. */
export async function openPage(page: Page, url: string, name: string, rest = ""): Promise<void> {
  await page.goto(`${url}#v=1&page=${name}${rest}`);
  await drawn(page, name);
}

/** Waits until the page's element stands, its season is computed, and every chart that has room is drawn. */
export async function drawn(page: Page, name: string): Promise<void> {
  await page.waitForFunction(
    (of) => {
      const element = document.querySelector("rl-shell")?.shadowRoot?.querySelector(`rl-${of}-page`) as unknown as
        | { season?: unknown; stale?: boolean; shadowRoot: ShadowRoot }
        | null
        | undefined;
      if (!element?.shadowRoot?.querySelector("h1")) return false;
      if (of === "sheet" && !element.shadowRoot.querySelector("article")) return false;
      if (element.stale !== undefined && (element.season === undefined || element.stale)) return false;
      const charts = [...element.shadowRoot.querySelectorAll("*")].filter((e) =>
        /-(chart|bar|strip)$/.test(e.localName),
      );
      return charts.every((chart) => chart.clientWidth === 0 || chart.shadowRoot?.querySelector("svg, ul") != null);
    },
    name,
    { timeout: 100_000 },
  );
}

/** Every text and name on the page outside of what says that it is in another language; runs in the browser. */
export function visibleTexts(): string[] {
  const out: string[] = [];
  const walk = (node: Node): void => {
    if (node instanceof Element) {
      if (node.closest("[lang=en], style, script")) return;
      if (node.localName === "option" && node.textContent === "English") return;
      for (const name of ["aria-label", "title", "aria-valuetext"]) {
        const value = node.getAttribute(name);
        if (value) out.push(value);
      }
      if (node.shadowRoot) for (const child of node.shadowRoot.childNodes) walk(child);
    } else if (node.nodeType === Node.TEXT_NODE && node.textContent?.trim()) out.push(node.textContent.trim());
    for (const child of node.childNodes) walk(child);
  };
  walk(document.body.querySelector("rl-shell")!);
  return out;
}
