import { readFileSync } from "node:fs";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openLesson, press, reveal, stage } from "./class-room.js";
import { openPage } from "./open-page.js";
import { type Opened, openPlayground } from "./open-playground.js";

let playground: Opened;

beforeAll(async () => {
  playground = await openPlayground();
});

afterAll(() => playground?.close());

const template = readFileSync(new URL("../../data/lessons/template/my-lesson.json", import.meta.url), "utf8");
const changed = (edit: (lesson: Record<string, unknown>) => void): string => {
  const lesson = JSON.parse(template);
  edit(lesson);
  return JSON.stringify(lesson);
};

const choose = (page: Page, content: string) =>
  page
    .getByLabel("Open a lesson file of your own")
    .setInputFiles({ name: "mine.json", mimeType: "application/json", buffer: Buffer.from(content) });

const faultRows = (page: Page): Promise<string[][]> =>
  page
    .locator("rl-lesson-shelf .failed tbody tr")
    .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent?.trim() ?? "")));

test("a trainer downloads a lesson, changes it and opens it; it is kept on the device and can be removed", async () => {
  const { page, troubles } = await openLesson(playground, "wilting-tree");
  const saved = page.waitForEvent("download");
  await page.getByRole("button", { name: "Download a lesson to start from" }).press("Enter");
  expect(readFileSync(await (await saved).path(), "utf8")).toBe(template);
  await page.getByText("How to write a lesson").click();
  for (const word of ["scenario", "columns", "airless-at-20", "rootRot"]) {
    await expect.poll(() => page.locator("rl-lesson-shelf details").textContent()).toContain(word);
  }
  await choose(
    page,
    changed((lesson) => (lesson.title = "Mine: <img src=x onerror=alert(1)> loam")),
  );
  await page.locator("rl-class-page h1", { hasText: "Mine: <img src=x" }).waitFor();
  expect(await page.locator("rl-class-page img").count()).toBe(0);
  await reveal(page);
  await page.reload();
  await page.locator("rl-class-page h1", { hasText: "Mine:" }).waitFor();
  await page.getByRole("button", { name: "Handout" }).click();
  await expect.poll(() => page.locator(".handout > ol > li").count()).toBe(12 + 3 + 3);
  await page.getByRole("button", { name: "Back to the lesson" }).click();
  await page.getByRole("button", { name: "Remove “Mine:" }).click();
  await page.locator("rl-class-page h1", { hasText: "The wilting tree" }).waitFor();
  await page.reload();
  await page.locator("rl-class-page h1", { hasText: "The wilting tree" }).waitFor();
  await expect.poll(() => page.getByLabel("Lesson:").locator("option").count()).toBe(11);
  expect(troubles).toEqual([]);
});

test("a broken file: every fault with its place, what stood there and the rule, and the lesson on screen stays", async () => {
  const { page, troubles } = await openLesson(playground, "run-length-clay");
  await press(page, "ArrowRight", "ArrowRight");
  const rowsOf = async (content: string): Promise<string[][]> => {
    await choose(page, content);
    await page.locator("rl-lesson-shelf .failed").waitFor();
    return faultRows(page);
  };
  const rows = await rowsOf(
    changed((lesson) => {
      lesson.colour = "red";
      lesson.hour = -3;
      lesson.measures = ["airless", "airles"];
      lesson.points = [{ label: "1", run: 5 }];
      lesson.id = "My Lesson";
      lesson.question = undefined;
      lesson.title = { en: "Only English" };
    }),
  );
  expect(rows).toContainEqual(["colour", '"red"', "is not a key of a lesson; look at the help below"]);
  expect(rows).toContainEqual(["hour", "-3", "must be at least 0"]);
  expect(rows).toContainEqual(["question", "nothing", "must be given"]);
  expect(rows).toContainEqual(["title.es", "nothing", "must be given"]);
  expect(rows).toContainEqual(["points[0].run", "5", "must be of the kind record"]);
  const place = (path: string) => rows.find(([where]) => where === path);
  expect(place("measures[1]")?.[2]).toMatch(/^must be one of thirsty, airless/);
  expect(place("id")?.[1]).toBe('"My Lesson"');
  expect(rows).toHaveLength(7);
  expect((await rowsOf("{ not json"))[0]).toContain("must be JSON that can be read");
  expect((await rowsOf("[]"))[0]?.[0]).toBe("the file");
  expect((await rowsOf(" ".repeat(300_000)))[0]?.[2]).toBe("must be at most 200 kB");
  const long = changed((lesson) => (lesson.scenario = { season: { startDate: "2025-12-01", days: 20_000 } }));
  expect((await rowsOf(long))[0]).toEqual([
    "points",
    "60000",
    "must be at most 3,000 days in all points, columns and the switch together",
  ]);
  const slow = changed((lesson) => (lesson.scenario = { engine: "richards" }));
  expect((await rowsOf(slow))[0]?.[2]).toMatch(/bucket/);
  await expect.poll(() => page.locator("rl-class-page h1").textContent()).toContain("One run on clay");
  await page.locator("rl-class-page", { hasText: "The class guesses 3 h." }).waitFor();
  await page.getByLabel("Language").selectOption("es");
  await page
    .getByLabel("Abrir una lección propia")
    .setInputFiles({ name: "m.json", mimeType: "application/json", buffer: Buffer.from('{"format":2}') });
  await page.locator("rl-lesson-shelf .failed", { hasText: "no es una lección" }).waitFor();
  expect(await faultRows(page)).toContainEqual(["format", "2", "debe ser uno de 1"]);
  expect(troubles).toEqual([]);
});

test("a lesson whose scenario cannot be read says which column and point, with path and rule; hostile changes harm nothing", async () => {
  const { page, troubles } = await openLesson(playground, "wilting-tree");
  await choose(
    page,
    changed((lesson) => {
      lesson.points = [
        { label: "2 h", run: { minutes: 120 } },
        { label: "wrong", run: { minutes: -5 }, change: { block: { treeSpacingM: "far", lines: 7 } } },
      ];
      lesson.pictures = ["plan", "leak", "pulses", "section"];
    }),
  );
  const failed = page.locator("rl-class-page .stage .failed");
  await failed.waitFor({ timeout: 60_000 });
  const text = (await failed.textContent()) ?? "";
  expect(text).toContain("Column “Loam” at “wrong”");
  expect(text).toMatch(/minutes|treeSpacingM/);
  await choose(
    page,
    changed((lesson) => {
      lesson.points = [{ label: "a", rain: { "2031-01-01": 5 } }];
      lesson.run = { start: "06:00", everyDays: 1, minutes: 60 };
    }),
  );
  await page.locator("rl-class-page .stage .failed", { hasText: "2031-01-01" }).waitFor({ timeout: 60_000 });
  await choose(
    page,
    changed((lesson) => {
      lesson.measures = ["nitrogen-taken-up", "root-ece-that-day"];
      lesson.scenario = JSON.parse('{"__proto__": {"polluted": 1}, "season": {"startDate": "2026-01-02", "days": 2}}');
    }),
  );
  await stage(page).focus();
  await press(page, "Space");
  await page.locator("rl-class-page .failed", { hasText: "Nitrogen the tree took" }).waitFor({ timeout: 60_000 });
  expect(await page.evaluate(() => (Object.prototype as Record<string, unknown>).polluted)).toBeUndefined();
  expect(troubles).toEqual([]);
});

test.each([
  ["full", "QuotaExceededError", "no room"],
  ["forbidden", "SecurityError", "may not keep anything"],
] as const)("storage %s: the lesson opens, and the page says that it will not be kept", async (_, name, says) => {
  const { page, troubles } = await playground.newPage({ viewport: { width: 1280, height: 800 } });
  await page.addInitScript((error) => {
    Object.defineProperty(window, "localStorage", {
      value: {
        getItem: () => null,
        setItem: () => {
          throw new DOMException("no", error);
        },
      },
    });
  }, name);
  await openPage(page, playground.url, "class");
  await choose(page, template);
  await page.locator("rl-class-page h1", { hasText: "My lesson" }).waitFor();
  await page.locator("rl-lesson-shelf .failed", { hasText: says }).waitFor();
  await page.getByRole("link", { name: "Truth" }).click();
  await page.locator("rl-truth-page").waitFor();
  await page.goBack();
  await page.locator("rl-class-page h1", { hasText: "My lesson" }).waitFor();
  expect(troubles).toEqual([]);
});

test("a link to a lesson that is not on this device says so and shows the first one", async () => {
  const { page } = await openLesson(playground, "neighbours-lesson");
  await page.locator("rl-class-page .failed", { hasText: "neighbours-lesson" }).waitFor();
  await expect.poll(() => page.locator("rl-class-page h1").textContent()).toContain("The wilting tree");
});
