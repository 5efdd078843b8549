import type { PageName } from "../state/scene.js";

/** Pages that come when they are first opened; the first page is there from the start. */
const loads: Readonly<Partial<Record<PageName, () => Promise<unknown>>>> = {
  block: () => import("./block/block-page.js"),
  class: () => import("./class/class-page.js"),
  sheet: () => import("./sheet/sheet-page.js"),
  truth: () => import("./truth/truth-page.js"),
  section: () => import("./section/section-page.js"),
};

/** Fetches a page once and remembers whether it is there. */
export class PageLoader extends EventTarget {
  readonly #states = new Map<PageName, "fetching" | "ready" | "missing">();

  /** What the page is, asking for it if nobody has. */
  stateOf(page: PageName): "fetching" | "ready" | "missing" {
    const load = loads[page];
    if (load === undefined) return "ready";
    const known = this.#states.get(page);
    if (known !== undefined) return known;
    this.#states.set(page, "fetching");
    load().then(
      () => this.#become(page, "ready"),
      () => this.#become(page, "missing"),
    );
    return "fetching";
  }

  retry(page: PageName): void {
    this.#states.delete(page);
    this.dispatchEvent(new Event("page-changed"));
  }

  #become(page: PageName, state: "ready" | "missing"): void {
    this.#states.set(page, state);
    this.dispatchEvent(new Event("page-changed"));
  }
}
