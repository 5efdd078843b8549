import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { judge, notApplicableFile, parseChecks, parseNotApplicable, publishedFiles } from "@rootledger/cli";
import { describe, expect, test } from "vitest";

const folder = fileURLToPath(new URL("../../data/published/", import.meta.url));
const checksOf = (file: string) => parseChecks(readFileSync(`${folder}${file}`, "utf8")) ?? [];

/** Two-dimensional runs of a minute have a test of their own, richards-linear.test.ts. */
const isQuick = ({ topic }: { readonly topic: string }): boolean => topic !== "richards-box";

/** How the printed figures of a check came to us. */
const said = { seen: "seen in print", memory: "from memory", derived: "derived, not printed" };

// Files whose topics have no test of their own. Every check has its source and its tolerance in the data file; the same functions run
// behind `rootledger truth`.
describe.each([
  "crop.json",
  "generator.json",
  "need.json",
  "oxygen.json",
  "richards.json",
  "roots.json",
  "salinity.json",
  "solutes.json",
  "surface.json",
  "uniformity.json",
  "weather.json",
])("data/published/%s", (file) => {
  test.each(
    checksOf(file)
      .filter(isQuick)
      .map((check) => {
        const wider = check.toleranceWiderThanPrint.join(", ");
        const fitted = wider === "" ? "" : `; tolerance wider than print: ${wider}`;
        return [`${check.id}: ${check.title} (${check.source}; ${said[check.verified]}${fitted})`, check] as const;
      }),
  )("%s", (_, check) => {
    expect(judge(check).misses).toEqual([]);
  });
});

describe("the published checks as a whole", () => {
  test("every data file is read by the truth command, and no id is there twice", () => {
    const files = readdirSync(folder).filter((name) => name.endsWith(".json") && name !== notApplicableFile);
    expect([...publishedFiles].sort()).toEqual(files.sort());
    const ids = files.flatMap((file) => checksOf(file).map(({ id }) => id));
    expect(ids.length).toBeGreaterThan(280);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  test("what is not checked has its reason", () => {
    const list = parseNotApplicable(readFileSync(`${folder}${notApplicableFile}`, "utf8")) ?? [];
    expect(list.length).toBeGreaterThan(5);
    for (const { reason, source } of list) {
      expect(reason.length).toBeGreaterThan(15);
      expect(source).toMatch(/[A-Z]/);
    }
  });

  const [check] = checksOf("crop.json").filter(({ id }) => id === "fao56-ex27-kcmid");

  test("a figure beyond its tolerance, a missing figure and a missing function are told", () => {
    expect(judge({ ...check, expected: { kc_mid: [1.07, 1.31] } }).misses).toEqual([
      expect.stringMatching(/^kc_mid\[1\]: ours 1\.2956\d+, printed 1\.31$/),
    ]);
    expect(judge({ ...check, expected: { kc_mid: [1.07] } }).pass).toBe(false);
    expect(judge({ ...check, expected: { kc_end: 1 } }).misses).toEqual([
      expect.stringMatching(/kc_end: ours undefined, printed 1/),
    ]);
    expect(judge({ ...check, id: "x", topic: "y" }).misses).toEqual([expect.stringMatching(/no function/)]);
    expect(judge({ ...check, inputs: {} }).misses).toEqual([expect.stringMatching(/no input kc_mid_tab/)]);
  });

  test("a range must hold ours, and a tolerance is not stretched by rounding", () => {
    const infiltration = checksOf("soil.json").filter(({ topic }) => topic === "basic-infiltration");
    for (const range of infiltration) {
      expect(judge(range).pass).toBe(true);
      expect(judge({ ...range, expected: { lowMmPerH: 1e6 } }).pass).toBe(false);
    }
    expect(judge({ ...check, tolerance: 0 }).pass).toBe(false);
  });
});
