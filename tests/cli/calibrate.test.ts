import { main } from "@rootledger/cli";
import { sensorTraces } from "rootledger/advise";
import { parseScenario } from "rootledger/scenario";
import { expect, test } from "vitest";
import { chanceStream } from "../../packages/rootledger/src/numeric/chance-stream.js";
import { dataPath, demoFiles, demoJson } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const days = 16;
const file = demoJson("scenario");
const short = { ...file, season: { ...file.season, days }, start: { kind: "same-state" } };
const place = { depthCm: 20, fromLineCm: 10 };

/** Readings of the demo block itself with noise, six-hourly, one of them missing. */
const readings = (() => {
  const parsed = parseScenario(short, demoFiles);
  if (!parsed.ok) throw new Error("the demo requires no fault");
  const [trace] = sensorTraces(parsed.scenario, { places: [place], fromHour: 0, hours: days * 24 });
  const { normal } = chanceStream(3, 0, "probe");
  const rows = Array.from({ length: days * 4 }, (_, k) => {
    const hour = 6 * k + 5;
    const date = new Date(Date.parse(`${parsed.scenario.season.startDate}T00:00:00Z`) + hour * 3_600_000);
    const theta = (trace?.theta[hour - 1] ?? 0) + 0.01 * normal();
    return `${date.toISOString().slice(0, 16)},20,10,${k === 7 ? "" : theta.toFixed(4)}`;
  });
  return `time,depthCm,fromLineCm,theta\n${rows.join("\n")}\n`;
})();

async function run(text: string, ...argv: string[]) {
  const { io, written } = memoryIo({ "probe.csv": text, [dataPath("demo/scenario.json")]: JSON.stringify(short) });
  const code = await main(["calibrate", dataPath("demo/scenario.json"), "--readings", "probe.csv", ...argv], io);
  return { code, out: written.stdout, err: written.stderr };
}

test("prints values with intervals, scores of blocks seen and unseen, and what the intervals rest on", async () => {
  const { code, out, err } = await run(readings, "--fit", "kcb", "--block-days", "4", "--noise", "0.01");
  expect(err).toBe("");
  expect(code).toBe(0);
  expect(out).toMatch(/63 soil-moisture readings/);
  expect(out).toMatch(/1 readings were missing/);
  expect(out).toMatch(/unknown, 90 % interval +unit +fitted +low +high/);
  expect(out).toMatch(/kcb +factor/);
  expect(out).toMatch(/only scored +\d+/);
  expect(out).toMatch(/do not know of an error of the model/);
  const { out: json } = await run(readings, "--fit", "kcb", "--block-days", "4", "--noise", "0.01", "--json");
  const answer = JSON.parse(json);
  // The demo's own value is a factor of 1.
  expect(answer.unknowns[0].low).toBeLessThan(1);
  expect(answer.unknowns[0].high).toBeGreaterThan(1);
  expect(answer.test.all.rmse).toBeLessThan(0.013);
  expect(answer.version).toMatch(/^\d+\.\d+\.\d+/);
});

test.each([
  [readings, ["--fit", "kbc"], /--fit: .*some of, each once: .*k-sat/],
  [readings, ["--fit", "structure"], /--fit/],
  [readings, ["--block-days", "0"], /--block-days must be a whole number/],
  [readings, ["--noise", "2"], /--noise must be above 0/],
  ["time,depthCm,fromLineCm,theta\n2026-01-02T06:00,20,10,31\n", [], /probe.csv line 2, theta/],
])("exit 1 and the rule for what cannot be fitted: %#", async (text, argv, rule) => {
  const { code, err, out } = await run(text, ...argv);
  expect(code).toBe(1);
  expect(out).toBe("");
  expect(err).toMatch(rule);
});

test("asks for the readings and says where a file cannot be read", async () => {
  const { io, written } = memoryIo();
  expect(await main(["calibrate", dataPath("demo/scenario.json")], io)).toBe(1);
  expect(written.stderr).toMatch(/needs --readings FILE/);
  const { io: other, written: said } = memoryIo();
  expect(await main(["calibrate", dataPath("demo/scenario.json"), "--readings", "none.csv"], other)).toBe(1);
  expect(said.stderr).toMatch(/none\.csv/);
});
