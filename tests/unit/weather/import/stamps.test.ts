import { stationTime } from "rootledger/weather";
import { describe, expect, test } from "vitest";
import { asked, faults, type Read, repaired, series, total, understood } from "./station-files.js";

// Every expected date is worked out by hand from the text of the case.

const times = ({ table }: Read): string[] => Array.from(table.minutes, stationTime);
const dates = (read: Read): string[] => times(read).map((time) => time.slice(0, 10));
const daily = (cells: readonly string[], header = "date", sign = ";"): string =>
  `${header}${sign}rain mm\n${cells.map((cell, d) => `${cell}${sign}${d % 3}`).join("\n")}\n`;

describe("dates as they are written", () => {
  test.each([
    ["ISO", ["2024-02-28", "2024-02-29", "2024-03-01"]],
    ["slashes, year first", ["2024/02/28", "2024/02/29", "2024/03/01"]],
    ["points", ["28.02.2024", "29.02.2024", "01.03.2024"]],
    ["slashes, day first", ["28/2/2024", "29/2/2024", "1/3/2024"]],
    ["slashes, month first", ["2/28/2024", "2/29/2024", "3/1/2024"]],
    ["two-digit years", ["28/02/24", "29/02/24", "01/03/24"]],
    ["run together", ["20240228", "20240229", "20240301"]],
    ["Spanish months", ["28-feb-24", "29-feb-24", "01-mar-24"]],
    ["German months", ["28. Februar 2024", "29. Februar 2024", "1. März 2024"]],
    ["French months", ["28 févr. 2024", "29 févr. 2024", "1 mars 2024"]],
    ["Portuguese months", ["28/fev/2024", "29/fev/2024", "01/mar/2024"]],
    ["English, month first", ["Feb 28 2024", "Feb 29 2024", "Mar 1 2024"]],
    ["year and day of the year", ["2024-059", "2024-060", "2024-061"]],
    ["year and day run together", ["2024059", "2024060", "2024061"]],
    ["day counts of a spreadsheet", ["45350", "45351", "45352"]],
    ["Thai years", ["28/02/2567", "29/02/2567", "01/03/2567"]],
    ["seconds since 1970", ["1709078400", "1709164800", "1709251200"]],
    ["milliseconds since 1970", ["1709078400000", "1709164800000", "1709251200000"]],
  ])("%s", (_, cells) => {
    expect(dates(understood(daily(cells)))).toEqual(["2024-02-28", "2024-02-29", "2024-03-01"]);
  });

  test("seconds since 1970 in a column of another name", () => {
    expect(dates(understood(daily(["1709078400", "1709164800"], "unixtime")))).toEqual(["2024-02-28", "2024-02-29"]);
  });

  test("two-digit years of the last century", () => {
    expect(dates(understood(daily(["30/12/69", "31/12/69", "01/01/70"])))).toEqual([
      "1969-12-30",
      "1969-12-31",
      "1970-01-01",
    ]);
  });

  test("dates in columns of year, month and day, and of year and day of the year", () => {
    const parts = understood(
      "Ano;Mes;Dia;Lluvia mm\n2023;12;31;1\n2024;1;1;2\n2024;2;29;3\n2023;2;29;4\n2024;3;1;4\n2024;3;2;4\n",
    );
    expect(dates(parts)).toEqual(["2023-12-31", "2024-01-01", "2024-02-29", "2024-03-01", "2024-03-02"]);
    // 29 February 2023 does not exist.
    expect(parts.report.rejectedRows).toMatchObject([{ line: 5, text: "2023 2 29 4" }]);
    const days = understood("year,day,rain mm\n2023,365,1\n2024,1,2\n2024,366,3\n");
    expect(dates(days)).toEqual(["2023-12-31", "2024-01-01", "2024-12-31"]);
  });

  test("day and month without a year are read with the year answered or in the title", () => {
    const text = "day,month,rain mm\n28,2,1\n29,2,2\n1,3,3\n";
    expect(faults(text)).toEqual(["no-dates"]);
    expect(dates(understood(text, { year: "2024" }))).toEqual(["2024-02-28", "2024-02-29", "2024-03-01"]);
    expect(dates(understood("Record of 2024,,\nday,month,rain mm\n28,2,1\n29,2,2\n1,3,3\n"))).toEqual([
      "2024-02-28",
      "2024-02-29",
      "2024-03-01",
    ]);
  });
});

describe("one order of day and month for the whole file", () => {
  const tail = ["03/01/2024", "04/01/2024", "13/01/2024"];

  test("one day beyond 12 tells the order of all rows", () => {
    expect(dates(understood(daily(["01/02/2024", "02/02/2024", "13/02/2024"])))).toEqual([
      "2024-02-01",
      "2024-02-02",
      "2024-02-13",
    ]);
    expect(dates(understood(daily(["02/01/2024", "02/02/2024", "02/13/2024"])))).toEqual([
      "2024-02-01",
      "2024-02-02",
      "2024-02-13",
    ]);
  });

  test("rows of both orders are refused, never mixed", () => {
    expect(faults(daily(["13/01/2024", "01/13/2024", "14/01/2024", "01/14/2024"]))).toEqual(["mixed-date-orders"]);
  });

  test("if all rows fit both and nothing tells, it is asked, with both readings", () => {
    const question = asked(daily(["03/01/2024", "05/07/2024", "02/11/2024"]));
    expect(question.key).toBe("date-order");
    expect(question.choices.map(({ meaning }) => meaning)).toEqual([
      "day first: 03/01/2024 is 2024-01-03",
      "month first: 03/01/2024 is 2024-03-01",
    ]);
  });

  test("dates always on the same day may be days or months: asked", () => {
    expect(asked(daily(["01/01/2024", "01/02/2024", "01/03/2024", "01/04/2024"])).key).toBe("date-order");
  });

  test("a format in the header or the unit row tells", () => {
    expect(dates(understood(daily(["03/01/2024", "05/07/2024"], "date dd/mm/yyyy")))).toEqual([
      "2024-01-03",
      "2024-07-05",
    ]);
    expect(dates(understood(daily(["03/01/2024", "05/07/2024"], "date (mm/dd/yyyy)")))).toEqual([
      "2024-03-01",
      "2024-05-07",
    ]);
  });

  test("an answer holds against the run of the rows, and is refused where it cannot be", () => {
    expect(dates(understood(daily(["03/01/2024", "04/01/2024"]), { "date-order": "mdy" }))).toEqual([
      "2024-03-01",
      "2024-04-01",
    ]);
    expect(faults(daily(tail), { "date-order": "mdy" })).toEqual(["too-many-bad-rows"]);
  });
});

describe("day counts of spreadsheets", () => {
  // ECMA-376 part 1, 18.17.4.1: 43830 in the 1904 system and 45292 in the 1900 system are the same day.
  test("the two systems are four years and a day apart", () => {
    expect(dates(understood(daily(["45292", "45293"])))).toEqual(["2024-01-01", "2024-01-02"]);
    expect(dates(understood(daily(["43830", "43831"]), { "serial-dates": "1904" }))).toEqual([
      "2024-01-01",
      "2024-01-02",
    ]);
  });

  test("a date far from the year of the title is asked about", () => {
    const question = asked(`Season 2024;\n${daily(["43830", "43831"])}`);
    expect(question.key).toBe("serial-dates");
    expect(question.choices.map(({ meaning }) => meaning)).toEqual(["43830 is 2019-12-31", "43830 is 2024-01-01"]);
  });

  test("fractions of a day are times", () => {
    expect(times(understood(daily(["45292.25", "45292.5", "45292.75"], "date", ",")))).toEqual([
      "2024-01-01T06:00",
      "2024-01-01T12:00",
      "2024-01-01T18:00",
    ]);
  });
});

describe("times", () => {
  const hours = (cells: readonly string[], header = "time"): string =>
    `${header},rain mm\n${cells.map((cell, i) => `${cell},${i}`).join("\n")}\n`;

  test("hour 24 is midnight of the next day and belongs to the day that ends", () => {
    const rows = Array.from(
      { length: 48 },
      (_, i) => `2024-05-${i < 24 ? "01" : "02"} ${String((i % 24) + 1).padStart(2, "0")}:00,${i < 24 ? 1 : 2}`,
    );
    const read = understood(`time,rain mm\n${rows.join("\n")}\n`);
    expect(times(read)[23]).toBe("2024-05-02T00:00");
    expect(read.report.stamp).toBe("end");
    expect(read.daily?.weather.startDate).toBe("2024-05-01");
    expect([...(read.daily?.weather.rainMm ?? [])]).toEqual([24, 48]);
  });

  test("hours in their own column, 1 to 24 and as HHMM", () => {
    expect(times(understood("date,hour,rain mm\n2024-05-01,23,0\n2024-05-01,24,1\n2024-05-02,1,2\n"))).toEqual([
      "2024-05-01T23:00",
      "2024-05-02T00:00",
      "2024-05-02T01:00",
    ]);
    expect(times(understood("date,time,rain mm\n2024-05-01,2330,0\n2024-05-02,0,1\n2024-05-02,30,2\n"))).toEqual([
      "2024-05-01T23:30",
      "2024-05-02T00:00",
      "2024-05-02T00:30",
    ]);
    expect(times(understood("year,doy,hhmm,rain mm\n2024,60,2300,0\n2024,60,2400,1\n2024,61,100,2\n"))).toEqual([
      "2024-02-29T23:00",
      "2024-03-01T00:00",
      "2024-03-01T01:00",
    ]);
  });

  test("noon and midnight of the 12-hour clock", () => {
    const read = understood(
      hours(["5/13/2024 11:30 AM", "5/13/2024 12:00 PM", "5/13/2024 12:30 p.m.", "5/13/2024 1:00 PM"]),
    );
    expect(times(read)).toEqual(["2024-05-13T11:30", "2024-05-13T12:00", "2024-05-13T12:30", "2024-05-13T13:00"]);
    expect(times(understood(hours(["5/13/2024 11:30 PM", "5/14/2024 12:00 AM"])))).toEqual([
      "2024-05-13T23:30",
      "2024-05-14T00:00",
    ]);
  });

  test("stamps run together to the minute and to the hour", () => {
    expect(times(understood(hours(["202405010000", "202405010030"])))).toEqual([
      "2024-05-01T00:00",
      "2024-05-01T00:30",
    ]);
    expect(times(understood(hours(["2024050123", "2024050200"])))).toEqual(["2024-05-01T23:00", "2024-05-02T00:00"]);
  });

  test("times that do not exist are rejected with their line", () => {
    const read = understood(
      hours([
        "2024-05-01 10:00",
        "2024-05-01 11:00",
        "2024-05-01 12:61",
        "2024-05-01 13:00",
        "2024-05-01 14:00",
        "2024-05-01 15:00",
      ]),
    );
    expect(read.report.rejectedRows).toMatchObject([{ line: 4, reason: "no such date or time" }]);
    expect(read.report.records).toBe(5);
  });

  test("a file whose rows are mostly no dates is refused", () => {
    expect(faults(hours(["2024-05-01 10:00", "2024-05-01 30:00", "2024-05-01 12:61"]))).toEqual(["too-many-bad-rows"]);
  });

  test("the newest first, and rows in no order, are sorted and counted", () => {
    const falling = understood(daily(["2024-05-03", "2024-05-02", "2024-05-01"]));
    expect(dates(falling)).toEqual(["2024-05-01", "2024-05-02", "2024-05-03"]);
    expect([...series(falling, "rainMm").values]).toEqual([2, 1, 0]);
    const mixed = understood(daily(["2024-05-01", "2024-05-04", "2024-05-02", "2024-05-05"]));
    expect(dates(mixed)).toEqual(["2024-05-01", "2024-05-02", "2024-05-04", "2024-05-05"]);
    expect(repaired(mixed, "rows-sorted")).toBe(4);
  });
});

describe("zones and clock changes", () => {
  const halfHours = (stamps: readonly string[], rain = (i: number): number => i % 7): string =>
    `time,rain mm\n${stamps.map((stamp, i) => `${stamp},${rain(i)}`).join("\n")}\n`;

  test("UTC becomes local standard time by the longitude or by an answer", () => {
    const text = "Longitude: -46.6\ntime (UTC),rain mm\n2024-05-01 02:00,1\n2024-05-01 03:00,2\n2024-05-01 04:00,3\n";
    const read = understood(text);
    // -46.6 / 15 rounds to -3 hours.
    expect([read.report.utcOffsetH, times(read)[0]]).toEqual([-3, "2024-04-30T23:00"]);
    expect(times(understood(text, { "local-zone": "-04:00" }))[0]).toBe("2024-04-30T22:00");
  });

  test("a zone in the header keeps the local times", () => {
    const read = understood("Date Time GMT+02:00,rain mm\n2024-05-01 02:00,1\n2024-05-01 03:00,2\n");
    expect([read.report.utcOffsetH, times(read)[0]]).toEqual([2, "2024-05-01T02:00"]);
  });

  const autumn = [
    "2024-10-27 01:00",
    "2024-10-27 01:30",
    "2024-10-27 02:00",
    "2024-10-27 02:30",
    "2024-10-27 02:00",
    "2024-10-27 02:30",
    "2024-10-27 03:00",
    "2024-10-27 03:30",
  ];

  test("the repeated hour of autumn keeps both copies, without an offset in the file", () => {
    const read = understood(halfHours(autumn));
    expect(times(read)).toEqual(
      ["00:00", "00:30", "01:00", "01:30", "02:00", "02:30", "03:00", "03:30"].map((clock) => `2024-10-27T${clock}`),
    );
    expect(read.report.clockChanges).toEqual([{ date: "2024-10-27", kind: "back", recordsByTheClock: 8 }]);
    expect(total(series(read, "rainMm").values)).toBe(0 + 1 + 2 + 3 + 4 + 5 + 6 + 0);
    expect(repaired(read, "clock-change")).toBe(4);
  });

  test("a repeated hour with the same values may be a duplicate: asked", () => {
    const text = "time,rain mm\n2024-10-27 01:00,0\n2024-10-27 02:00,0\n2024-10-27 02:00,0\n2024-10-27 03:00,0\n";
    expect(asked(text).key).toBe("clock");
    expect(understood(text, { clock: "changes" }).report.records).toBe(4);
    expect(understood(text, { clock: "standard" }).report.records).toBe(3);
  });

  test("the missing hour of spring may be a gap: asked, and both answers give their times", () => {
    const text = halfHours(["2024-03-31 01:00", "2024-03-31 01:30", "2024-03-31 03:00", "2024-03-31 03:30"]);
    expect(asked(text).key).toBe("clock");
    const changed = understood(text, { clock: "changes" });
    expect(times(changed)).toEqual(["01:00", "01:30", "02:00", "02:30"].map((clock) => `2024-03-31T${clock}`));
    expect(changed.report.absentStamps).toBe(0);
    expect(understood(text, { clock: "standard" }).report.absentStamps).toBe(2);
  });

  test("an hour missing on another day is a gap without question", () => {
    const read = understood(
      halfHours(["2024-04-03 01:00", "2024-04-03 01:30", "2024-04-03 03:00", "2024-04-03 03:30"]),
    );
    expect(read.report.absentStamps).toBe(2);
  });

  test("south of the equator the clock goes back in April", () => {
    const read = understood(
      halfHours([
        "2024-04-07 01:30",
        "2024-04-07 02:00",
        "2024-04-07 02:30",
        "2024-04-07 02:00",
        "2024-04-07 02:30",
        "2024-04-07 03:00",
      ]),
    );
    expect(times(read)[0]).toBe("2024-04-07T00:30");
    expect(times(read).at(-1)).toBe("2024-04-07T03:00");
  });

  test("offsets on both sides of the autumn change need no question", () => {
    const read = understood(
      halfHours([
        "2024-10-27T02:00+02:00",
        "2024-10-27T02:30+02:00",
        "2024-10-27T02:00+01:00",
        "2024-10-27T02:30+01:00",
      ]),
    );
    expect(times(read)).toEqual(["01:00", "01:30", "02:00", "02:30"].map((clock) => `2024-10-27T${clock}`));
  });

  test("a time that stands twice with different values is asked about", () => {
    const text = daily(["2024-05-01", "2024-05-02", "2024-05-02", "2024-05-03"]);
    expect(asked(text)).toMatchObject({ key: "duplicates", evidence: ["line 3", "line 4"] });
    expect([...series(understood(text, { duplicates: "first" }), "rainMm").values]).toEqual([0, 1, 0]);
    expect([...series(understood(text, { duplicates: "last" }), "rainMm").values]).toEqual([0, 2, 0]);
  });
});
