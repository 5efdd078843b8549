import axe from "axe-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

test("the page opens from nothing, asks nobody else and reports no error", async () => {
  const { page, troubles } = await playground.newPage();
  await page.goto(playground.url, { waitUntil: "networkidle" });
  expect(await page.title()).toContain("Rootledger");
  expect(await page.locator("h1").first().textContent()).not.toBe("");
  expect(troubles).toEqual([]);
});

test.each(["light", "dark"] as const)("the page has no accessibility fault that axe can see (%s)", async (scheme) => {
  const { page } = await playground.newPage({ colorScheme: scheme, reducedMotion: "reduce", bypassCSP: true });
  await page.goto(playground.url, { waitUntil: "networkidle" });
  await page.evaluate(axe.source);
  const faults = await page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run();
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
  });
  expect(faults).toEqual([]);
});
