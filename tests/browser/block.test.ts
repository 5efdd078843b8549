import { afterAll, beforeAll, expect, test } from "vitest";
import { openPage } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

test("emitters are opened and plugged by key and by click; litres on roots and on nothing follow; the link keeps it", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "block", "&roots=disc&root.radius=0.6&wet=0.2");
  const emitters = page.locator("rl-row-plan").getByRole("switch");
  await expect.poll(() => emitters.count()).toBe(20);
  // Two lines half a metre from the row: of 20 emitters 4 stand within 0.6 m of the trunk; their circles reach over the edge.
  await expect
    .poll(() => page.locator("rl-block-page h1").textContent())
    .toMatch(/20 of 20 emitters open; (9\.\d|1\d)%/);
  await page.getByRole("button", { name: "Open the nearest 4" }).click();
  await expect.poll(() => page.locator("rl-row-plan [aria-checked=true]").count()).toBe(4);
  await emitters.first().focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Space");
  await expect.poll(() => page.locator("rl-row-plan [aria-checked=true]").count()).toBe(5);
  await page.keyboard.press("Space");
  await page.waitForFunction(() => location.hash.includes("plugged="));
  await expect.poll(() => page.locator("rl-block-page .two strong").first().textContent()).toMatch(/L on roots/);
  // The soil is computed with how many are open, not which: the page says so as soon as one is plugged, and only then.
  const countOnly = page.getByText("takes how many emitters are open, not which");
  expect(await countOnly.textContent()).toMatch(/litres stay, so it runs longer/);
  await page.getByRole("button", { name: "Open all" }).click();
  await expect.poll(() => countOnly.count()).toBe(0);
  expect(troubles).toEqual([]);
});

test("lines that drain bring the tree at the low end, which can then be chosen for the comparison", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openPage(page, playground.url, "block");
  await page.getByLabel("Lines drain to the low end after every closing").check();
  await page.waitForFunction(() => location.hash.includes("drain=1"));
  await page.getByRole("link", { name: "Compare" }).click();
  await page.locator("rl-compare-page").getByLabel("Tree:").selectOption("over-fed");
  await page.waitForFunction(
    () => {
      const compare = document.querySelector("rl-shell")?.shadowRoot?.querySelector("rl-compare-page") as unknown as {
        season?: { result: { arms: { result: { trees: string[] } }[] } };
        stale: boolean;
      };
      return !compare.stale && compare.season?.result.arms[0]?.result.trees.includes("over-fed");
    },
    undefined,
    { timeout: 90_000 },
  );
  await page.getByRole("link", { name: "Block" }).click();
  await page.getByLabel("Lines drain to the low end after every closing").uncheck();
  await page.getByRole("link", { name: "Compare" }).click();
  await expect.poll(() => page.locator("rl-compare-page").getByLabel("Tree:").inputValue()).toBe("mean");
});
