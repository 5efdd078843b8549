import { parseDailyWeather } from "rootledger/weather";
import { expect, test } from "vitest";

const header = "date,tMinC,tMaxC,rainMm\n";
const days = (count: number, row: (day: number) => string): string =>
  Array.from(
    { length: count },
    (_, d) => `2023-${d < 31 ? "01" : "02"}-${String((d % 31) + 1).padStart(2, "0")},${row(d)}`,
  ).join("\n");

test("a whole file in Fahrenheit gives twenty faults of the kind and a count of the rest", () => {
  const parsed = parseDailyWeather(header + days(50, () => "30,88,0"));
  if (parsed.ok) throw new Error("must not parse");
  expect(parsed.faults).toHaveLength(21);
  expect(parsed.faults[0]).toMatchObject({ code: "looks-like-fahrenheit", path: "line 2, tMaxC", received: "88" });
  expect(parsed.faults[20]).toEqual({
    code: "too-many-faults",
    path: "tMaxC",
    received: "50 in all",
    rule: "has 30 more faults of the kind looks-like-fahrenheit",
  });
});

test("faults of other kinds and columns are all kept beside many of one kind", () => {
  const parsed = parseDailyWeather(header + days(50, (d) => `${d === 40 ? "x" : 30},88,${d === 45 ? -1 : 0}`));
  if (parsed.ok) throw new Error("must not parse");
  expect(parsed.faults.map((fault) => `${fault.code} @ ${fault.path}`)).toEqual(
    expect.arrayContaining(["not-a-number @ line 42, tMinC", "negative-rain @ line 47, rainMm"]),
  );
});

test("sixty thousand broken lines end in a short list, not in a full stack", () => {
  const parsed = parseDailyWeather(header + "x,y,z,\n".repeat(60_000));
  if (parsed.ok) throw new Error("must not parse");
  expect(parsed.faults.length).toBeLessThan(100);
});
