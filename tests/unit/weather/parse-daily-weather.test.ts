import { formatDailyWeather, parseDailyWeather } from "rootledger/weather";
import { expect, test } from "vitest";

const good =
  "date,tMinC,tMaxC,rhMaxPct,rainMm\n2024-02-28,8.1,21.4,88,0\n2024-02-29,7,20,,1.5\n2024-03-01,6.5,19.25,101,0\n";

const codesOf = (text: string): string[] => {
  const parsed = parseDailyWeather(text);
  return parsed.ok ? [] : parsed.faults.map((fault) => `${fault.code} @ ${fault.path}`);
};

test("a good file gives a record over a leap day, with what is missing noted", () => {
  const parsed = parseDailyWeather(good);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  expect(parsed.weather.startDate).toBe("2024-02-28");
  expect(parsed.weather.days).toBe(3);
  expect([...parsed.weather.rhMaxPct]).toEqual([88, Number.NaN, 100]);
  expect(parsed.notes).toContain("rhMaxPct: above 100 on 1 of 3 days, taken as 100");
  expect(parsed.notes).toContain("rhMaxPct: missing on 1 of 3 days");
  expect(parsed.notes).toContain("windMPerS: missing on 3 of 3 days");
  expect(parsed.notes).toContain("solarMJPerM2: missing on 3 of 3 days");
});

test("what is not needed is not said to be missing: columns beside ET0, sunshine beside radiation", () => {
  const notes = (text: string): readonly string[] => {
    const parsed = parseDailyWeather(text);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    return parsed.notes;
  };
  expect(notes("date,et0Mm,rainMm\n2024-02-28,5,0\n2024-02-29,6,0\n")).toEqual([]);
  const sun = (column: string): readonly string[] => notes(`date,tMinC,tMaxC,rainMm,${column}\n2024-02-28,8,21,0,9\n`);
  expect(sun("solarMJPerM2").join()).not.toMatch(/sunshineH|solarMJPerM2/);
  expect(sun("sunshineH").join()).not.toMatch(/sunshineH|solarMJPerM2/);
  // A column that is there in part is told of.
  expect(notes("date,et0Mm,rainMm,windMPerS\n2024-02-28,5,0,2\n2024-02-29,6,0,\n")).toEqual([
    "windMPerS: missing on 1 of 2 days",
  ]);
});

test("line ends, a byte order mark, quotes, blank lines and column order do not matter", () => {
  const other =
    '\uFEFFrainMm,"date",tMaxC,tMinC,rhMaxPct\r\n0,2024-02-28,21.4,8.1,88\r\n\r\n1.5,"2024-02-29",20,7,\r\n0,2024-03-01,19.25,6.5,101\r\n';
  const a = parseDailyWeather(good);
  const b = parseDailyWeather(other);
  if (!a.ok || !b.ok) throw new Error("must parse");
  expect(b.weather).toEqual(a.weather);
});

test("what is written is read back the same", () => {
  const a = parseDailyWeather(good);
  if (!a.ok) throw new Error("must parse");
  const b = parseDailyWeather(formatDailyWeather(a.weather));
  if (!b.ok) throw new Error("must parse");
  expect(b.weather).toEqual(a.weather);
});

test.each([
  ["nothing", "", "empty-file @ "],
  ["a header alone", "date,tMinC,tMaxC,rainMm\n", "empty-file @ "],
  ["semicolons", "date;rainMm;tMinC;tMaxC\n2024-01-01;0;1;2\n", "not-comma-separated @ line 1"],
  ["an unknown column", "date,rainMm,tMinC,tMaxC,rain_in\n2024-01-01,0,1,2,0\n", "unknown-column @ line 1"],
  ["a column twice", "date,rainMm,rainMm,et0Mm\n2024-01-01,0,0,2\n", "duplicate-column @ line 1"],
  ["no temperatures and no ET0", "date,rainMm,tMinC\n2024-01-01,0,1\n", "missing-column @ line 1"],
  ["a cell too few", "date,rainMm,et0Mm\n2024-01-01,0\n", "wrong-cell-count @ line 2 + missing-value @ line 2, et0Mm"],
  ["another date form", "date,rainMm,et0Mm\n01/02/2024,0,3\n", "not-a-date @ line 2, date"],
  ["30 February", "date,rainMm,et0Mm\n2024-02-30,0,3\n", "not-a-date @ line 2, date"],
  ["a day twice", "date,rainMm,et0Mm\n2024-01-01,0,3\n2024-01-01,0,3\n", "duplicate-date @ line 3, date"],
  ["time running back", "date,rainMm,et0Mm\n2024-01-02,0,3\n2024-01-01,0,3\n", "date-out-of-order @ line 3, date"],
  ["a gap", "date,rainMm,et0Mm\n2024-01-01,0,3\n2024-01-04,0,3\n", "gap-in-dates @ line 3, date"],
  ["a decimal comma in quotes", 'date,rainMm,et0Mm\n2024-01-01,0,"3,5"\n', "not-a-number @ line 2, et0Mm"],
  ["a missing code", "date,rainMm,tMinC,tMaxC\n2024-01-01,0,-9999,20\n", "impossible-value @ line 2, tMinC"],
  ["negative rain", "date,rainMm,et0Mm\n2024-01-01,-25,3\n", "negative-rain @ line 2, rainMm"],
  ["no rain value", "date,rainMm,et0Mm\n2024-01-01,,3\n", "missing-value @ line 2, rainMm"],
  ["no temperature", "date,rainMm,tMinC,tMaxC\n2024-01-01,0,,20\n", "missing-value @ line 2, tMinC"],
  ["no ET0", "date,rainMm,et0Mm\n2024-01-01,0,\n", "missing-value @ line 2, et0Mm"],
  ["Fahrenheit", "date,rainMm,tMinC,tMaxC\n2024-01-01,0,38,88\n", "looks-like-fahrenheit @ line 2, tMaxC"],
  ["Tmin above Tmax", "date,rainMm,tMinC,tMaxC\n2024-01-01,0,21,20\n", "min-above-max @ line 2, tMinC"],
  ["humidity 111 %", "date,rainMm,et0Mm,rhMaxPct\n2024-01-01,0,3,111\n", "impossible-value @ line 2, rhMaxPct"],
  ["humidity as a fraction", "date,rainMm,et0Mm,rhMaxPct\n2024-01-01,0,3,0.88\n", "looks-like-fraction @ rhMaxPct"],
  [
    "radiation in W/m2",
    "date,rainMm,et0Mm,solarMJPerM2\n2024-01-01,0,3,290\n",
    "impossible-value @ line 2, solarMJPerM2",
  ],
])("%s is one clear fault", (_, text, fault) => {
  expect(codesOf(text).join(" + ")).toBe(fault);
});

test("all faults come at once, each with its place, value and rule", () => {
  const parsed = parseDailyWeather("date,tMinC,tMaxC,rainMm\n2024-01-01,22,21,0\n2024-01-03,x,20,-1\n");
  if (parsed.ok) throw new Error("must not parse");
  expect(parsed.faults.map((fault) => fault.path)).toEqual([
    "line 3, date",
    "line 3, tMinC",
    "line 3, rainMm",
    "line 2, tMinC",
  ]);
  expect(parsed.faults[0]).toEqual({
    code: "gap-in-dates",
    path: "line 3, date",
    received: "2024-01-03",
    rule: "must be 2024-01-02: 1 day is missing",
  });
});
