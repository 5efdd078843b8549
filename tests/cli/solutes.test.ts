import { main } from "@rootledger/cli";
import { describe, expect, it } from "vitest";
import { dataText, type Editable } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

/** A demo comparison of solutes, cut to a few days and its first soil. */
async function compared(name: "leaching" | "nitrogen", edit: (file: Editable) => void, ...flags: string[]) {
  const file: Editable = JSON.parse(dataText(`demo/${name}.json`));
  file.season.days = 7;
  file.start.kind = "same-state";
  file.soils = file.soils.slice(0, 1);
  edit(file);
  const files = { "/d/file.json": JSON.stringify(file), "/d/weather.csv": dataText("demo/weather.csv") };
  const { io, written } = memoryIo(files);
  const code = await main(["compare", "/d/file.json", ...flags], io);
  expect(written.stderr).toBe("");
  expect(code).toBe(0);
  return written.stdout;
}

const firstWeek = (file: Editable): void => {
  for (const { nitrogen } of file.programmes) {
    nitrogen?.byHand?.forEach((dose: Editable, i: number) => {
      dose.date = `2025-12-0${i + 1}`;
    });
  }
};

describe("salt and nitrogen on the command line", () => {
  it("salt has its rows beside thirst and air, and no word of chemicals", async () => {
    const text = await compared("leaching", () => {});
    for (const row of ["ECe of the roots, season, dS/m", "Leaching fraction", "Salt below roots", "Airless"]) {
      expect(text).toMatch(new RegExp(`\n${row}.*( +-?[\\d.]+){6}\n`));
    }
    expect(text).not.toMatch(/backflow/);
    expect(text).not.toMatch(/and salt and nitrogen\./);
  });

  it("nitrogen says what a pair changes, where the grams are, and the caution on chemicals", async () => {
    const text = await compared("nitrogen", firstWeek);
    expect(text).toMatch(/What changes from A to B: the nitrogen given\./);
    expect(text).toMatch(/\nOn ground without roots, g N per tree +0\.0 /);
    expect(text.replace(/\s+/g, " ")).toMatch(/backflow preventer and an interlock come first, and local codes/);
  });

  it("a programme without nitrogen stands beside one with it, in draws too", async () => {
    const without = (file: Editable): void => {
      delete file.programmes[1].nitrogen;
      delete file.block.nitrogen;
    };
    const answer = JSON.parse(await compared("nitrogen", without, "--json", "--members", "2", "--workers", "1"));
    const given = answer.differences.find((d: Editable) => d.measureId === "nitrogen-given" && d.tree === "mean");
    expect(given.fromValue).toBeGreaterThan(4);
    expect(given.toValue).toBe(0);
    expect(answer.ensemble.finished).toBe(2);
  });
});
