import { afterAll, beforeAll, expect, test } from "vitest";
import { openLesson, press, reveal, said, stage, sweep } from "./class-room.js";
import { type Opened, openPlayground } from "./open-playground.js";

/** A class of 45 minutes as a trainer gives it, step by step, by the keyboard alone. */
let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

test("0-4 min: the same wilted tree twice, soil hidden, big vote counters, the spade locked, no answer anywhere", async () => {
  const { page, troubles } = await openLesson(playground, "wilting-tree");
  const trees = page.locator("rl-class-page svg.tree");
  await expect.poll(() => trees.count()).toBe(2);
  expect(await trees.nth(0).innerHTML()).toBe(await trees.nth(1).innerHTML());
  expect(await page.locator("rl-section-chart, rl-storage-chart, .gauge, .number, rl-number-table").count()).toBe(0);
  expect(await said(page)).not.toMatch(/kPa|%|without air|cannot pull|drinks/i);
  await expect.poll(() => page.getByRole("button", { name: "Spade: vote first" }).isDisabled()).toBe(true);
  await expect.poll(() => page.getByRole("button", { name: "Tensiometer: dig first" }).isDisabled()).toBe(true);
  await press(page, "d", "t");
  expect(await page.locator("rl-section-chart").count()).toBe(0);
  await press(page, "1", "2", "2");
  const votes = await page.getByRole("group", { name: "Votes of the class" }).getByRole("button").allTextContents();
  expect(votes.map((text) => text.replace(/^\d /, "").trim())).toEqual([
    "Left dry, right drowned: 1",
    "Left drowned, right dry: 2",
    "Both dry: 0",
    "Both drowned: 0",
  ]);
  expect(troubles).toEqual([]);
});

test("4-8 min: the spade, then the tensiometer: about 60 and about 2 kPa, both drink less than half, all on one screen", async () => {
  const { page, troubles } = await openLesson(playground, "wilting-tree", "&wall=1");
  await press(page, "2");
  await press(page, "d");
  await expect.poll(() => page.locator("rl-section-chart").count(), { timeout: 60_000 }).toBe(2);
  expect(await page.locator(".gauge").count()).toBe(0);
  await press(page, "t");
  await page.locator("rl-class-page .gauge .said").nth(1).waitFor();
  const readings = await page.locator("rl-class-page .gauge .said").allTextContents();
  const kPa = readings.map((text) => Number.parseFloat(text));
  expect(kPa[0]).toBeGreaterThan(1);
  expect(kPa[0]).toBeLessThan(3);
  expect(kPa[1]).toBeGreaterThan(55);
  expect(kPa[1]).toBeLessThan(65);
  for (const text of await page.locator("rl-class-page .drinks").allTextContents()) {
    const [, drinks, wants] = /Drinks ([\d.]+) L of the ([\d.]+) L/.exec(text) ?? [];
    expect(Number(drinks) / Number(wants)).toBeLessThan(0.5);
  }
  await page.setViewportSize({ width: 1920, height: 1080 });
  await expect
    .poll(async () => {
      const boxes = await Promise.all(
        (await page.locator("rl-section-chart, .gauge, .drinks").all()).map((part) => part.boundingBox()),
      );
      return Math.max(...boxes.map((box) => (box ? box.y + box.height : Number.POSITIVE_INFINITY)));
    })
    .toBeLessThan(1080);
  const letters = await page
    .locator(".drinks")
    .first()
    .evaluate((e) => Number.parseFloat(getComputedStyle(e).fontSize));
  expect(letters).toBeGreaterThan(24);
  await press(page, "Space");
  await page.locator("rl-class-page .answer").waitFor();
  expect(troubles).toEqual([]);
});

test("8-14 min: three soils in mm and litres beside the day's demand as a bottle: clay lends about as much as sand", async () => {
  const { page, troubles } = await openLesson(playground, "window-bar");
  expect(await page.locator("rl-window-bar").count()).toBe(0);
  await press(page, "3");
  await reveal(page);
  const bar = page.locator("rl-window-bar");
  const { tubes, demandL } = await bar.evaluate((e) => {
    const drawn = e as unknown as { tubes: { lendsL: number; lendsText: string }[]; demandL: number };
    return { tubes: drawn.tubes, demandL: drawn.demandL };
  });
  const [sand, loam, clay] = tubes;
  for (const tube of tubes) expect(tube.lendsText).toMatch(/^[\d.]+ mm, [\d.]+ L$/);
  expect(clay!.lendsL / sand!.lendsL).toBeLessThan(1.25);
  expect(clay!.lendsL).toBeLessThan(loam!.lendsL);
  // As the lesson says: sand and clay lend about half of the day's demand, loam two thirds.
  for (const { lendsL } of [sand!, clay!]) expect(Math.round((10 * lendsL) / demandL)).toBe(5);
  expect(Math.round((6 * loam!.lendsL) / demandL)).toBe(4);
  await expect.poll(() => bar.locator(".bottle").count()).toBe(1);
  await expect.poll(() => bar.locator(".glass").count()).toBe(3);
  expect(troubles).toEqual([]);
});

test("14-22 min: run length 1 to 12 h on clay: the class says stop, its guess is a line, the knee is drawn point by point", async () => {
  const { page, troubles } = await openLesson(playground, "run-length-clay");
  const slider = page.getByRole("slider");
  expect(await slider.getAttribute("aria-valuetext")).toBe("1 h");
  await press(page, "ArrowRight", "ArrowRight", "ArrowRight", "ArrowRight");
  await page.locator("rl-class-page", { hasText: "The class guesses 5 h." }).waitFor();
  expect(await page.locator("rl-sweep-chart, rl-section-chart").count()).toBe(0);
  await reveal(page);
  const chart = page.locator("rl-sweep-chart").first();
  await chart.locator(".guess").first().waitFor({ state: "attached" });
  const [crumbly, tight] = await sweep(page, "Hours without air at 20 cm");
  expect(crumbly).toHaveLength(12);
  const step = (values: readonly number[], from: number, to: number) => (values[to]! - values[from]!) / (to - from);
  expect(crumbly![0]).toBeGreaterThan(0);
  expect(step(crumbly!, 0, 7)).toBeGreaterThan(0.6);
  expect(step(crumbly!, 0, 7)).toBeLessThan(1.1);
  expect(step(crumbly!, 7, 11)).toBeGreaterThan(2);
  expect(Math.max(...tight!.slice(0, 6))).toBeLessThan(0.1);
  expect(tight![6]).toBeLessThan(0.25);
  expect(step(tight!, 7, 11)).toBeGreaterThan(0.5);
  const [airCrumbly, airTight] = await sweep(page, "Airless root-hours");
  expect(airTight![6]).toBeGreaterThan(1);
  expect(airCrumbly![6]).toBeGreaterThan(airTight![6]!);
  const drawn = await chart.locator("path.line").first().getAttribute("d");
  expect(drawn).not.toMatch(/[CQSTA]/);
  expect(drawn?.match(/[ML]/g)).toHaveLength(12);
  const live = page.locator("rl-class-page .number strong").first();
  const before = await live.textContent();
  await press(page, "ArrowRight");
  await expect.poll(() => live.textContent()).not.toBe(before);
  await press(page, "f", "ArrowRight", "ArrowRight");
  await page.locator("rl-class-page h2", { hasText: "Frozen: 6 h" }).waitFor();
  await page.locator("rl-class-page h2", { hasText: "Now: 8 h" }).waitFor();
  expect(troubles).toEqual([]);
});

test("22-27 min: 1, 2, 4 and 8 pulses: an hour's pause wins nothing, two hours a fifth, too much water makes pulses worse; air memory is drawn", async () => {
  const { page, troubles } = await openLesson(playground, "pulses");
  await press(page, "ArrowRight", "ArrowRight", "ArrowRight");
  await reveal(page);
  const [one, two] = await sweep(page, "Airless root-hours");
  expect(one![3]).toBeGreaterThan(one![0]! * 0.97);
  expect(two![3]! / two![0]!).toBeGreaterThan(0.7);
  expect(two![3]! / two![0]!).toBeLessThan(0.87);
  expect((two![0]! - two![2]!) / (two![0]! - two![3]!)).toBeGreaterThan(0.6);
  const [, thirst] = await sweep(page, "Thirsty root-hours");
  expect(thirst![3]! / thirst![0]!).toBeGreaterThan(1.6);
  const days = await page
    .locator("rl-pulse-air-chart")
    .evaluateAll((all) =>
      all.map((e) => (e as unknown as { day: { pulses: { before: number }[] } }).day.pulses.map((p) => p.before)),
    );
  expect(days[0]).toHaveLength(8);
  expect(days[0]![0]).toBeLessThan(0.05);
  expect(days[0]!.at(-1)).toBeGreaterThan(0.2);
  await expect.poll(() => page.locator("rl-pulse-air-chart").first().locator(".dot").count()).toBe(8);
  await press(page, "s");
  await expect.poll(() => page.getByRole("switch").getAttribute("aria-checked")).toBe("true");
  for (const column of await sweep(page, "Airless root-hours")) {
    for (const value of column.slice(1)) expect(value).toBeGreaterThan(column[0]!);
  }
  expect(troubles).toEqual([]);
});

test("27-31 min: the draining-lines switch: off, both trees are one; on, the low tree drowns as pulses rise", async () => {
  const { page, troubles } = await openLesson(playground, "drain-out");
  await press(page, "3");
  await reveal(page);
  const off = await sweep(page, "Airless root-hours");
  expect(off[1]).toEqual(off[0]);
  expect(off[0]![3]).toBeLessThan(off[0]![0]!);
  await press(page, "s");
  await expect.poll(() => page.getByRole("switch").getAttribute("aria-checked")).toBe("true");
  const [mean, low] = await sweep(page, "Airless root-hours");
  for (let i = 1; i < 4; i++) expect(low![i]).toBeGreaterThan(low![i - 1]!);
  expect(low![3]! / low![0]!).toBeGreaterThan(2);
  expect(mean![3]).toBeLessThan(mean![0]!);
  const [given, givenLow] = await sweep(page, "Water given");
  expect(givenLow![3]! / given![3]!).toBeGreaterThan(1.3);
  expect(troubles).toEqual([]);
});

test("31-35 min: the same slider on sand: air stays, water leaves below the roots and nitrogen dots go with it, in the colours of before", async () => {
  const { page, troubles } = await openLesson(playground, "run-length-sand");
  await press(page, "2");
  await reveal(page);
  const [airSand, airClay] = await sweep(page, "Hours without air at 20 cm");
  expect(Math.max(...airSand!)).toBe(0);
  expect(airClay!.at(-1)).toBeGreaterThan(10);
  const [sand, clay] = await sweep(page, "Water below the roots");
  expect(sand!.at(-1)! / sand![0]!).toBeGreaterThan(9);
  expect(clay!.at(-1)).toBeGreaterThanOrEqual(sand!.at(-1)!);
  const [nitrogen, nitrogenClay] = await sweep(page, "Nitrogen below the roots");
  expect(nitrogen!.at(-1)! / nitrogen![0]!).toBeGreaterThan(5.5);
  expect(nitrogenClay!.at(-1)!).toBeLessThan(nitrogen!.at(-1)! / 2);
  const dots = () => page.locator("rl-leak-chart").first().locator("circle.dot").count();
  const few = await dots();
  for (let i = 0; i < 11; i++) await press(page, "ArrowRight");
  await expect.poll(dots).toBeGreaterThan(few + 20);
  const colour = (of: string, mark: string) =>
    page
      .locator(of)
      .first()
      .locator(mark)
      .first()
      .evaluate((e) => getComputedStyle(e).fill);
  const below = await colour("rl-leak-chart", ".water");
  expect(below).toBe("rgb(29, 91, 130)");
  expect(await stage(page).evaluate((e) => getComputedStyle(e).getPropertyValue("--below"))).not.toBe("");
  expect(troubles).toEqual([]);
});

test("35-39 min: interval 1 to 7 days: the tree drinks less, both limits on one chart of equal weight", async () => {
  const { page, troubles } = await openLesson(playground, "interval");
  await press(page, "ArrowRight");
  await reveal(page);
  const [sand, loam, clay] = await sweep(page, "Share drunk of what the tree wants");
  expect(sand![0]! - sand![1]!).toBeGreaterThan(14);
  expect(loam![1]).toBeGreaterThan(90);
  expect(loam![2]).toBeLessThan(90);
  for (const column of [sand!, loam!]) {
    for (let i = 1; i < 7; i++) expect(column[i]).toBeLessThan(column[i - 1]!);
  }
  expect(clay![0]).toBeLessThan(85);
  expect(clay![6]).toBeLessThan(clay![3]! - 10);
  const [, air] = await sweep(page, "Airless root-hours");
  expect(air![6]! / air![0]!).toBeGreaterThan(1.6);
  const charts = page.locator("rl-storage-chart");
  await expect.poll(() => charts.count()).toBe(3);
  const weights = await charts
    .first()
    .locator(".limit")
    .evaluateAll((lines) => lines.map((line) => [getComputedStyle(line).stroke, getComputedStyle(line).strokeWidth]));
  expect(new Set(weights.map(String)).size).toBe(1);
  await expect.poll(() => charts.first().locator("line.air").count()).toBeGreaterThan(0);
  await expect.poll(() => charts.first().locator("line.pull").count()).toBeGreaterThan(0);
  const beneath = async () =>
    charts.nth(1).evaluate((e) => {
      const { arm } = e as unknown as { arm: { storageMm: Float64Array; pullLineMm: number } };
      return arm.storageMm.filter((mm) => mm < arm.pullLineMm).length / arm.storageMm.length;
    });
  await press(page, "ArrowLeft");
  const daily = await beneath();
  for (let i = 0; i < 6; i++) await press(page, "ArrowRight");
  await expect.poll(beneath).toBeGreaterThan(daily * 2);
  expect(troubles).toEqual([]);
});

test("39-42 min: a young tree under 20 emitters, then under 4: the roots get the same, a tenth is lost", async () => {
  const { page, troubles } = await openLesson(playground, "young-tree");
  await press(page, "ArrowRight", "ArrowLeft");
  await reveal(page);
  const [nothing] = await sweep(page, "Litres on nothing");
  const [roots] = await sweep(page, "Litres on roots");
  expect(nothing![0]! / (nothing![0]! + roots![0]!)).toBeGreaterThan(0.86);
  expect(nothing!.at(-1)! / nothing![0]!).toBeLessThan(0.13);
  for (const litres of roots!) expect(Math.abs(litres - roots![0]!)).toBeLessThan(0.1);
  const emitters = () => page.locator("rl-row-plan").locator("circle.open").count();
  const before = await emitters();
  for (let i = 0; i < 5; i++) await press(page, "ArrowRight");
  await expect.poll(emitters).toBe(before / 5);
  expect(troubles).toEqual([]);
});

test("42-45 min: root rot moves the damage band from days to hours; the text says that sources differ; then the handout", async () => {
  const { page, troubles } = await openLesson(playground, "root-rot");
  for (let i = 0; i < 6; i++) await press(page, "ArrowRight");
  await reveal(page);
  const band = () =>
    page.locator("rl-damage-chart").evaluate((e) => {
      const { fromH, toH } = (e as unknown as { data: { fromH: number; toH: number } }).data;
      return [fromH, toH];
    });
  expect(await band()).toEqual([48, 336]);
  await press(page, "s");
  await expect.poll(band).toEqual([12, 168]);
  const text = await page.locator("rl-class-page .stage").textContent();
  expect(text).toContain("Sources differ more than tenfold");
  expect(text).toContain("Revista Brasileira de Fruticultura (2020)");
  expect(text).toContain("Crumbly clay: inside the band");
  expect(text).not.toMatch(/dies? after \d|kills? (in|after) \d/i);
  const [crumbly, tight] = await sweep(page, "Longest spell without air");
  expect(crumbly![6]).toBeGreaterThanOrEqual(12);
  expect(Math.max(crumbly![4]!, tight![4]!)).toBeLessThan(12);
  expect(tight![6]).toBeGreaterThanOrEqual(12);
  expect(Math.max(...crumbly!, ...tight!)).toBeLessThan(48);
  await page.getByRole("button", { name: "Handout" }).press("Enter");
  await page.locator("rl-class-page article.handout").waitFor();
  expect(troubles).toEqual([]);
});
