import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright";
import { expect, test } from "vitest";
import { bundled } from "./bundled.js";
import { browserPath, launchArguments } from "./open-playground.js";
import { columnsOfProgrammes } from "./simulate-columns.js";

const demo = (name: string) => readFileSync(fileURLToPath(new URL(`../../data/demo/${name}`, import.meta.url)), "utf8");

// Node and Chromium carry different versions of one JavaScript engine, whose exp, log and pow may differ in the last digit.
test("every measure and column of the demo is the same in node and in Chromium, to 1e-9 of the column's largest", async () => {
  const inputs = [demo("comparison.json"), demo("weather.csv")] as const;
  const ours = columnsOfProgrammes(...inputs);
  const browser = await chromium.launch({ executablePath: browserPath(), args: launchArguments });
  try {
    const page = await browser.newPage();
    await page.evaluate(await bundled("simulate-columns.ts", "library"));
    const theirs = await page.evaluate((texts) => {
      const { library } = globalThis as unknown as { library: { columnsOfProgrammes: typeof columnsOfProgrammes } };
      return library.columnsOfProgrammes(...texts);
    }, inputs);
    expect(Object.keys(theirs)).toEqual(Object.keys(ours));
    expect(Object.keys(ours).length).toBeGreaterThan(100);
    let worst = 0;
    for (const [name, column] of Object.entries(ours)) {
      expect(theirs[name]!.length, name).toBe(column.length);
      // At least one litre, millimetre or hour: a residual is all rounding.
      const scale = column.reduce((most, value) => Math.max(most, Math.abs(value)), 1);
      const apart = column.reduce((most, value, k) => Math.max(most, Math.abs(value - theirs[name]![k]!)), 0);
      expect(apart / scale, name).toBeLessThan(1e-9);
      worst = Math.max(worst, apart / scale);
    }
    console.log(
      `${Object.keys(ours).length} columns, node ${process.version} and Chromium ${browser.version()}: ${worst}`,
    );
  } finally {
    await browser.close();
  }
});
