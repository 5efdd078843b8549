import { describe, expect, test } from "vitest";
import { isSeen } from "./blocks.js";
import { fitSoil } from "./fit-soil.js";
import { fittedSoils } from "./fitted-soils.js";
import { scoredDays } from "./scored-days.js";
import { stationRecord } from "./station-record.js";
import { stations } from "./stations.js";
import { type StationReport, validateStation } from "./validate-station.js";

const stationNamed = (part: string) => {
  const station = stations.find(({ name }) => name.startsWith(part));
  if (station === undefined) throw new RangeError(`stationNamed requires a station: got ${part}`);
  return station;
};
const stored = fittedSoils();
const reportOf = (part: string): StationReport => {
  const station = stationNamed(part);
  return validateStation(station, { values: stored[station.name] }).report;
};

/** Largest error of the 0-50 cm mean on unseen blocks, m3/m3: what this work set out to reach; our choice, no source. */
const target = 0.03;

/** Depths at which one of the baselines comes closer than the column; DEVELOPERS.md says why. */
const shortfalls: Readonly<Record<string, readonly number[]>> = {
  Goodwell: [],
  "Bowling Green": [5, 10, 20],
  Merced: [10],
};

describe.each(Object.entries(shortfalls))("%s, soil fitted to the seen blocks", (part, missed) => {
  const report = reportOf(part);

  test("the 0-50 cm mean of the unseen blocks is within 0.03 m3/m3 and closer than the season's wave", () => {
    expect(report.mean0to50Cm.rmse).toBeLessThan(target);
    expect(report.mean0to50Cm.rmse).toBeLessThan(report.baselines.harmonic.mean0to50Cm.rmse);
    expect(report.mean0to50Cm.rmse).toBeLessThan(report.persistence.mean0to50Cm.rmse);
  });

  test("at each depth of the top 50 cm it is closer than both baselines, but for the named shortfalls", () => {
    const top = report.depthsCm.filter((depth) => depth <= 50);
    expect(top.filter((_, k) => !report.beatsBothAtDepth[k])).toEqual(missed);
    expect(top.every((_, k) => report.rmse[k] < report.baselines.harmonic.rmse[k])).toBe(true);
  });

  test("says that grass tests vertical flow only", () => {
    expect(report.notes.join(" ")).toMatch(/vertical flow only/);
  });
});

test("Newton: rain that the gauge missed is told from an error of the model", () => {
  const { notes, unseenDays } = reportOf("Newton");
  expect(notes.join("\n")).toMatch(/gauge gave nothing on 57 days/);
  expect(notes.join("\n")).toMatch(/unexplained gain .* the gauge was out/);
  expect(unseenDays).toBeGreaterThan(100);
});

test("Sebring: the water table is recognised, and nowhere else", () => {
  expect(reportOf("Sebring").notes.join("\n")).toMatch(/^water table/m);
  for (const part of ["Goodwell", "Bowling Green", "Merced", "Newton"]) {
    expect(reportOf(part).notes.join("\n")).not.toMatch(/^water table/m);
  }
});

test("Manhattan: frozen days are left out", () => {
  const record = stationRecord(stationNamed("Manhattan"));
  const { scored, notes } = scoredDays(record);
  expect(notes.join("\n")).toMatch(/161 days with soil at or below 0.5 C/);
  record.soilTemp5C.forEach((t, d) => {
    if (t <= 0.5) expect(scored.every((column) => column[d] === 0)).toBe(true);
  });
});

test("the fit never looks at an unseen day", () => {
  const record = stationRecord(stationNamed("Merced"));
  const { scored } = scoredDays(record);
  const hidden = { ...record, theta: record.theta.map((column) => column.map((t, d) => (isSeen(d) ? t : Number.NaN))) };
  const withAll = fitSoil(record, scored, 2);
  expect(fitSoil(hidden, scored, 2)).toEqual(withAll);
  expect(withAll.misfit).toBeLessThan(fitSoil(record, scored, 0).misfit);
});
