import axe from "axe-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openCompare, sentence, settled } from "./compare-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

/** Words that an English page cannot do without. */
const englishWords =
  /\b(the|of|and|with|from|roots|thirsty|airless|water|rain|days|hours|weekly|daily|floor|season|smallest|matters|counted)\b/i;

test("the page speaks Spanish throughout, remembers it, and writes numbers and dates its way", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  expect(await page.evaluate(() => document.documentElement.lang)).toBe("en");
  await page.getByLabel("Language").selectOption("es");
  await page.locator("h1", { hasText: "La misma agua, tres maneras de darla" }).waitFor();
  await settled(page);
  for (const summary of await page.locator("rl-number-table summary:visible").all()) await summary.click();
  expect(await page.evaluate(() => document.documentElement.lang)).toBe("es");
  const texts = await page.evaluate(visibleTexts);
  expect(texts.length).toBeGreaterThan(200);
  expect(texts.filter((text) => englishWords.test(text))).toEqual([]);
  // A unit stands once beside what it measures.
  expect(texts).toContain("Hasta ahora, L");
  expect(texts.filter((text) => /, L, L\b/.test(text))).toEqual([]);
  expect(await page.getByRole("slider", { name: "Hora mostrada" }).getAttribute("aria-valuetext")).toMatch(/13 ene/);
  await page.goto(playground.url);
  await settled(page);
  await expect.poll(() => page.locator("h1").textContent()).toContain("La misma agua");
  expect(troubles).toEqual([]);

  /** Every text and name on the page outside of what says that it is in another language. */
  function visibleTexts(): string[] {
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
});

test("faults, failures and bad links are told in Spanish", async () => {
  const { page } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, `${playground.url}#v=1&lang=es&a.pulses=many&plugged=3,1&tune=3`);
  const faults = page.locator("rl-model-status .failed");
  await expect.poll(() => faults.textContent()).toContain("debe ser un número entero de 1 a 24");
  await expect
    .poll(() => faults.textContent())
    .toContain("debe ser números enteros de 0 a 199, de menor a mayor, con puntos entre ellos");
  await expect.poll(() => faults.textContent()).toContain("«tune» no es un ajuste");
  await faults.getByRole("button", { name: "Cerrar" }).click();
  await sentence(page, 0).getByLabel("Días de un riego a otro").selectOption("1");
  await settled(page);
  await page.getByLabel("Litros por árbol y día").fill("900");
  await page.getByLabel("Litros por árbol y día").press("Enter");
  await faults.waitFor();
  await expect.poll(() => faults.textContent()).toMatch(/no debe solaparse: el día \d+ abre antes/);
});

test("a device that speaks Spanish is spoken to in Spanish, and axe finds nothing", async () => {
  const { page } = await playground.newPage({
    locale: "es-CL",
    bypassCSP: true,
    viewport: { width: 390, height: 844 },
  });
  await openCompare(page, playground.url);
  await expect.poll(() => page.locator("h1").textContent()).toContain("La misma agua");
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.evaluate(axe.source);
  const faults = await page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run();
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
  });
  expect(faults).toEqual([]);
});
