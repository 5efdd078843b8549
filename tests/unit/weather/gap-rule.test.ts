import { parseDailyWeather } from "rootledger/weather";
import { expect, test } from "vitest";

const text = `date,tMinC,tMaxC,rainMm
2024-02-27,4,20,0
2024-02-28,,,1
2024-02-29,,22,
2024-03-01,10,23,0
`;

test("without a rule a missing temperature or rain is a fault", () => {
  const parsed = parseDailyWeather(text);
  if (parsed.ok) throw new Error("must not parse");
  expect(parsed.faults.map((fault) => `${fault.code} @ ${fault.path}`)).toEqual([
    "missing-value @ line 3, tMinC",
    "missing-value @ line 3, tMaxC",
    "missing-value @ line 4, rainMm",
    "missing-value @ line 4, tMinC",
  ]);
});

test("a rule fills on a line between the days around the gap and counts what it filled", () => {
  const parsed = parseDailyWeather(text, { temperature: { kind: "interpolate", longestDays: 2 }, rain: "dry" });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  expect([...parsed.weather.tMinC]).toEqual([4, 6, 8, 10]);
  expect([...parsed.weather.tMaxC]).toEqual([20, 21, 22, 23]);
  expect([...parsed.weather.rainMm]).toEqual([0, 1, 0, 0]);
  expect(parsed.notes.slice(0, 3)).toEqual([
    "tMinC: missing on 2 of 4 days, taken on a line between the days around the gap",
    "tMaxC: missing on 1 of 4 days, taken on a line between the days around the gap",
    "rainMm: missing on 1 of 4 days, taken as dry",
  ]);
});

test("a gap longer than the rule allows, or at the end of the record, stays a fault", () => {
  const rule = { temperature: { kind: "interpolate", longestDays: 1 }, rain: "dry" } as const;
  const long = parseDailyWeather(text, rule);
  const end = parseDailyWeather("date,tMinC,tMaxC,rainMm\n2024-01-01,1,9,0\n2024-01-02,,8,0\n", rule);
  expect(long.ok ? [] : long.faults.map((fault) => fault.path)).toEqual(["line 3, tMinC", "line 4, tMinC"]);
  expect(end.ok ? [] : end.faults.map((fault) => fault.path)).toEqual(["line 3, tMinC"]);
});

test("the reading of dates and the rule do not hide a fault elsewhere", () => {
  const parsed = parseDailyWeather(text.replace("23,0", "23,wet"), {
    temperature: { kind: "interpolate", longestDays: 2 },
    rain: "dry",
  });
  expect(parsed.ok).toBe(false);
});
