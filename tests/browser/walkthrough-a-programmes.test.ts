import { afterAll, beforeAll, expect, test } from "vitest";
import { openCompare, sentence, settled, shadowText } from "./compare-page.js";
import { openPage } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

// An agronomist's visit, first part: the grower's own programme, its need, the same water in pulses, a third line.

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

/** The grower's own: 4 h 24 min at 22:00, every night, and the demo's other programmes beside it. */
const ownNight = "&programmes=2&a.every=1&a.from=22%3A00&litres=140.8";
/** Beside it the same in four pulses, two hours apart. */
const withPulses = `${ownNight}&b.pulses=4&b.gap=120&b.from=22%3A00`;

test("step 1: opens in the car without a network, in Spanish, a real block already on screen", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 390, height: 844 } });
  await openCompare(page, playground.url);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.context().setOffline(true);
  await page.reload();
  await settled(page);
  await page.getByLabel("Language").selectOption("es");
  await page.locator("h1", { hasText: "La misma agua" }).waitFor();
  await expect.poll(() => page.locator("rl-section-chart:visible").count(), { timeout: 30_000 }).toBe(2);
  expect(await page.locator("input[type=password], dialog").count()).toBe(0);
  expect(troubles).toEqual([]);
});

test("step 2: the grower's own programme, typed as a sentence, says emitters, flow, litres, hectare and what is wetted", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, playground.url);
  const own = sentence(page, 0);
  await own.getByLabel("Days from run to run").selectOption("1");
  await own.getByLabel("Time of the first opening").selectOption("1320");
  await own.getByLabel("Minutes per pulse").fill("264");
  await own.getByLabel("Minutes per pulse").press("Enter");
  await settled(page);
  const column = page.locator(".sentences .columns > div").first();
  // Two lines of an emitter every 0.4 m on 4 m of row: 20 of 1.6 L/h are 32 L/h; 4 h 24 min bring 140.8 L, on 24 m2 58.7 m3/ha.
  await expect
    .poll(() => column.locator("p.small").first().textContent())
    .toMatch(/^\s*141 L a tree in 4\.4 h; 141 L a day\.\s+20 emitters, 32 L\/h together; 58\.7 m³\/ha a day\./);
  await expect.poll(() => page.locator(".heads h2").first().textContent()).toMatch(/A daily, one run/);
  await openPage(page, playground.url, "block", ownNight);
  await expect.poll(() => page.locator("rl-row-plan svg .roots").count()).toBeGreaterThan(0);
  await expect.poll(() => page.locator("rl-row-plan").getByRole("switch").count()).toBe(20);
  await expect.poll(() => page.locator("rl-block-page figure").nth(1).textContent()).toMatch(/32 L\/h/);
  expect(troubles).toEqual([]);
});

test("step 3: ET0 of 7.5 and avocado: 126 L net, 140 gross, and the amount is right", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, `${playground.url}#v=1${ownNight}`);
  await page.getByText("What the tree needs").click();
  const need = page.locator("rl-need-figure");
  await need.getByLabel("ET0, mm a day").fill("7.5");
  await need.getByLabel("ET0, mm a day").press("Enter");
  await need.getByLabel("Crop:").selectOption("avocado");
  // Kc 0.7 for January is the irrigation card's of CNR and INIA, Chile (Valparaiso region); 7.5 x 0.7 x 24 m2 = 126 L, over 0.9 = 140 L.
  await expect.poll(() => need.locator(".sum").textContent()).toBe("126 L a tree net, 140 L gross at 90%");
  await expect
    .poll(() => need.locator("li").first().textContent())
    .toBe("A brings 141 L a day: the amount is right; the question is timing and place.");
  expect(await shadowText(need)).toMatch(/58\.3 m³\/ha/);
  await page.waitForFunction(() => location.hash.includes("need.et0=7.5"));
  expect(troubles).toEqual([]);
});

test("step 6: a copy in four pulses of 66 min, two hours apart: the same water, a difference with its floor, no praise by default", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, `${playground.url}#v=1${ownNight}&programmes=2`);
  await page.getByRole("button", { name: "Duplicate programme A" }).click();
  await page.getByRole("button", { name: "Remove programme B" }).click();
  await sentence(page, 1).getByLabel("Pulses in a run").selectOption("4");
  await sentence(page, 1).getByLabel("Pause between pulses").selectOption("120");
  await settled(page);
  await expect
    .poll(async () => Number(await sentence(page, 1).getByLabel("Minutes per pulse").inputValue()))
    .toBeCloseTo(66, 0);
  const badges = (): Promise<string> => shadowText(page.locator("rl-badge-line"));
  await expect.poll(badges).toMatch(/Same water/);
  expect(await badges()).not.toMatch(/Not the same water/);
  await expect.poll(() => page.locator("rl-verdict-brief").count()).toBe(2);
  for (const brief of await page.locator("rl-verdict-brief").all()) {
    await expect.poll(() => shadowText(brief)).toMatch(/A to B \(pulses\): /);
  }
  await expect.poll(() => page.locator("rl-verdict-list li").first().textContent()).toMatch(/floor/);
  expect(troubles).toEqual([]);
});

test("step 8: a third programme with a third line and two runs a day, and the run in the dear tariff is flagged", async () => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 900 } });
  await openCompare(page, `${playground.url}#v=1${withPulses}`);
  await page.getByRole("button", { name: "Duplicate programme A" }).click();
  await sentence(page, 2).getByLabel("Time of the first opening").selectOption("360");
  const third = page.locator(".sentences .columns > div").nth(2);
  await third.getByText("Rule, second run, lines of its own").click();
  await third.getByLabel("and again at").selectOption("13:00");
  await third.getByLabel("Lines:").selectOption("3");
  await page.getByText("Power, rain and the longest run").click();
  await page.getByLabel("Cheap power from").selectOption("22:00");
  await page.getByRole("combobox", { name: "to", exact: true }).selectOption("08:00");
  await settled(page);
  // 30 emitters bring 48 L/h; 140.8 L take 2 h 56 min, half of it from 13:00 on.
  await expect.poll(() => third.locator("p.small").first().textContent()).toMatch(/30 emitters, 48 L\/h/);
  const flag = (at: number): Promise<string | null> => page.locator("rl-limits-control li").nth(at).textContent();
  await expect.poll(() => flag(0)).toBe("A: all of it on cheap power.");
  await expect
    .poll(() => flag(2))
    .toMatch(/^C: 1 h 28 min of 2 h 56 min fall outside cheap power \(22:00–08:00\), in the dear tariff\.$/);
  expect(await shadowText(page.locator("rl-badge-line"))).not.toMatch(/Not the same water/);
  const arms = await page.evaluate(() => {
    const compare = document.querySelector("rl-shell")?.shadowRoot?.querySelector("rl-compare-page") as unknown as {
      season: {
        result: {
          arms: {
            soil: string;
            result: {
              section: { lineAtCm: Float64Array; wetByLane: Float64Array; laneEdgesCm: Float64Array };
              window: { litresPerTree: number };
              measures: { id: string; values: Float64Array }[];
            };
          }[];
        };
      };
    };
    return compare.season.result.arms.map(({ result: { section, window, measures } }) => ({
      lines: Array.from(section.lineAtCm),
      wettedCm: section.wetByLane.reduce(
        (sum, share, j) => sum + share * (section.laneEdgesCm[j + 1]! - section.laneEdgesCm[j]!),
        0,
      ),
      lendsL: window.litresPerTree,
      airless: measures.find(({ id }) => id === "airless")!.values[0]!,
    }));
  });
  expect(arms[2]!.lines).toEqual([0, 100]);
  expect(arms[2]!.wettedCm).toBeGreaterThan(arms[0]!.wettedCm);
  expect(arms[2]!.lendsL).toBeGreaterThan(arms[0]!.lendsL);
  // Clay: the water goes into more ground in shorter runs, and fewer root-hours lack air.
  expect(arms[2]!.airless).toBeLessThan(arms[0]!.airless);
  expect(troubles).toEqual([]);
});
