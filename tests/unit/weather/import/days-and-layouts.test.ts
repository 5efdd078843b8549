import { formatDailyWeather, formatStationTable, joinDailyWeather, parseDailyWeather } from "rootledger/weather";
import { describe, expect, test } from "vitest";
import { dataText } from "../../../support/demo-files.js";
import { asked, bytesOf, faults, type Read, reported, series, understood } from "./station-files.js";

const weatherOf = ({ daily }: Read) => {
  if (daily === undefined) throw new Error("no days");
  return daily.weather;
};

/** Hours of two days, rows from midnight; `leave` takes rows out. */
function twoDays(
  header: string,
  cells: (hour: number) => string,
  leave: (hour: number) => boolean = () => false,
): string {
  const rows = Array.from({ length: 48 }, (_, h) => h).filter((h) => !leave(h));
  const lines = rows.map((h) => `2024-05-${h < 24 ? "13" : "14"} ${String(h % 24).padStart(2, "0")}:00,${cells(h)}`);
  return `time,${header}\n${lines.join("\n")}\n`;
}

describe("days of hourly records", () => {
  const full = twoDays(
    "temp C,RH %,wind m/s,solar W/m2,rain mm",
    (h) => `${h % 24},${90 - (h % 24)},2,${h % 24 === 12 ? 500 : 0},${h === 30 ? 2.5 : 0}`,
  );

  test("lowest, highest, mean and sum of each local day", () => {
    const read = understood(full);
    expect(read.daily?.notes).toEqual([]);
    const weather = weatherOf(read);
    expect(weather.startDate).toBe("2024-05-13");
    expect([...weather.tMinC]).toEqual([0, 0]);
    expect([...weather.tMaxC]).toEqual([23, 23]);
    expect([...weather.rhMinPct]).toEqual([67, 67]);
    expect([...weather.rhMaxPct]).toEqual([90, 90]);
    expect([...weather.rhMeanPct]).toEqual([78.5, 78.5]);
    expect([...weather.windMPerS]).toEqual([2, 2]);
    // 500 W/m2 over an hour.
    expect([...weather.solarMJPerM2]).toEqual([1.8, 1.8]);
    expect([...weather.rainMm]).toEqual([0, 2.5]);
  });

  test("a day without all its hours has no sum; means and extremes need five sixths; counted", () => {
    const read = understood(
      twoDays(
        "temp C,rain mm",
        (h) => `${h % 24},1`,
        (h) => h === 5 || (h >= 24 && h < 30),
      ),
    );
    const weather = weatherOf(read);
    expect([...weather.rainMm]).toEqual([Number.NaN]);
    // 23 of 24 hours are there on the first day, 18 on the second, which is left without any figure.
    expect([...weather.tMaxC]).toEqual([23]);
    expect(read.daily?.notes).toContain("1 day at the ends without any figure left out");
    expect(read.daily?.notes).toContain("rainMm: 2 of 2 days have too few records (41 recorded on them), left missing");
    const recorded = weatherOf(
      understood(
        twoDays(
          "temp C,rain mm",
          (h) => `${h % 24},1`,
          (h) => h === 5 || (h >= 24 && h < 30),
        ),
        { "incomplete-days": "as-recorded" },
      ),
    );
    expect([...recorded.rainMm]).toEqual([23, 18]);
  });

  test("a day may begin at nine: its rain is that of nine to nine", () => {
    const read = understood(full, { "day-start": "09:00" });
    expect(read.table.dayStartMinutes).toBe(540);
    const weather = weatherOf(read);
    // Hours 0 to 8 belong to the day before, hour 30 (06:00 of the 14th) to the day that began on the 13th at nine.
    // The days before and after it have 9 and 15 hours and no figure.
    expect([weather.startDate, ...weather.rainMm]).toEqual(["2024-05-13", 2.5]);
  });

  test("stamps at the end of the hour bring midnight to the day before", () => {
    const read = understood(full, { stamp: "end" });
    expect(weatherOf(read).startDate).toBe("2024-05-13");
    // The 13th runs from its 01:00 (1 C) to 00:00 of the 14th (0 C), the 14th begins with its 01:00.
    expect([...weatherOf(read).tMinC]).toEqual([0, 1]);
  });

  test("the stamp that the file does not say is an assumption in the report", () => {
    const read = understood(
      twoDays(
        "rain mm",
        () => "0",
        (h) => h < 7,
      ),
    );
    expect(read.report.assumptions).toContainEqual({ key: "stamp", taken: "start", because: "the file does not say" });
    expect(read.report).toMatchObject({ stamp: "start", absentStamps: 0, stepMinutes: 60 });
  });

  test("radiation that is blank at night counts 0 there, and is missing by day", () => {
    const days = Array.from({ length: 7 }, (_, d) => d + 10).flatMap((day) =>
      Array.from({ length: 24 }, (_, h) => {
        const lost = day === 14 && h === 12;
        const value = lost || h < 6 || h > 18 ? "" : String(100 * (h - 5));
        return `2024-05-${day} ${String(h).padStart(2, "0")}:00,${value},0`;
      }),
    );
    const read = understood(`time,solar W/m2,rain mm\n${days.join("\n")}\n`);
    const weather = weatherOf(read);
    // 100 + 200 + ... + 1300 W/m2, an hour each.
    expect(weather.solarMJPerM2[0]).toBeCloseTo((9100 * 3600) / 1e6, 9);
    expect(weather.solarMJPerM2[4]).toBeNaN();
    expect(read.daily?.notes).toEqual([
      "solarMJPerM2: 77 blank records at times of day without sun count 0",
      "solarMJPerM2: 1 of 7 days have too few records (30.24 recorded on them), left missing",
    ]);
  });

  test("weekly records and records of no even step give no days", () => {
    expect(understood("date,rain mm\n2024-05-06,1\n2024-05-13,2\n2024-05-20,0\n2024-05-27,1\n").daily).toBeUndefined();
    expect(
      understood("time,rain mm\n2024-05-06 00:00,1\n2024-05-06 00:07,2\n2024-05-06 00:14,0\n").daily,
    ).toBeUndefined();
  });
});

describe("gaps", () => {
  const text = "date,tmin C,tmax C,rain mm\n2024-05-13,10,20,1\n2024-05-14,,,\n2024-05-15,12,24,\n2024-05-18,10,20,0\n";

  test("stay gaps without a rule, absent days too", () => {
    const weather = weatherOf(understood(text));
    expect(weather.days).toBe(6);
    expect([...weather.rainMm]).toEqual([1, Number.NaN, Number.NaN, Number.NaN, Number.NaN, 0]);
  });

  test("are filled by a rule that is answered, and counted", () => {
    const read = understood(text, { "fill-rain": "dry", "fill-temperature-days": "1" });
    const weather = weatherOf(read);
    expect([...weather.rainMm]).toEqual([1, 0, 0, 0, 0, 0]);
    // One day on a line between 10 and 12; the gap of two days is longer than the rule allows.
    expect([...weather.tMinC]).toEqual([10, 11, 12, Number.NaN, Number.NaN, 10]);
    expect(read.daily?.notes).toEqual([
      "tMinC: missing on 1 of 6 days, taken on a line between the days around the gap",
      "tMaxC: missing on 1 of 6 days, taken on a line between the days around the gap",
      "rainMm: missing on 4 of 6 days, taken as dry",
    ]);
  });

  test("dew point from vapour pressure where the file has no humidity", () => {
    const read = understood(
      "date,tmin C,tmax C,vapour pressure hPa,rain mm\n2024-05-13,10,20,12.28,1\n2024-05-14,11,21,12.28,0\n",
    );
    // FAO-56 (Allen et al. 1998) Annex 2, table 2.3: saturation at 10.0 C is 1.228 kPa.
    expect(weatherOf(read).dewPointC[0]).toBeCloseTo(10, 1);
  });
});

describe("files joined by their dates", () => {
  const first = weatherOf(understood("date,rain mm\n2024-05-13,1\n2024-05-14,2\n"));
  const later = weatherOf(understood("date,tmin C,tmax C,rain mm\n2024-05-14,10,20,2\n2024-05-15,11,21,3\n"));

  test("each day has what any file has", () => {
    const joined = joinDailyWeather([later, first]);
    if (!joined.ok) throw new Error("must join");
    expect(joined.weather.startDate).toBe("2024-05-13");
    expect([...joined.weather.rainMm]).toEqual([1, 2, 3]);
    expect([...joined.weather.tMaxC]).toEqual([Number.NaN, 20, 21]);
    expect(joined.notes).toContain("tMaxC: missing on 1 of 3 days");
  });

  test("two values for one day are a conflict", () => {
    const other = weatherOf(understood("date,rain mm\n2024-05-14,5\n2024-05-15,3\n"));
    expect(joinDailyWeather([first, other])).toEqual({ ok: false, conflicts: ["2024-05-14, rainMm: 2 and 5"] });
    expect(joinDailyWeather([]).ok).toBe(false);
  });
});

describe("layouts", () => {
  test("JSON of lists, of records a line, and inside an object", () => {
    const lists = {
      latitude: 37,
      hourly_units: { time: "iso8601" },
      hourly: { time: ["2024-05-13T00:00", "2024-05-13T01:00"], "temperature (C)": [10, 9.5], "rain mm": [0, null] },
    };
    const read = understood(JSON.stringify(lists));
    expect([...series(read, "tMeanC").values]).toEqual([10, 9.5]);
    expect(reported(read, "rain mm").missing).toBe(1);
    expect(understood('{"date":"2024-05-13","rain mm":1.5}\n{"date":"2024-05-14","rain mm":0}\n').report.records).toBe(
      2,
    );
    expect(
      understood(
        JSON.stringify({
          station: "X",
          data: [
            { date: "2024-05-13", "rain mm": "1,5" },
            { date: "2024-05-14", "rain mm": 2.5 },
          ],
        }),
      ).table.columns[0].values,
    ).toEqual(Float64Array.of(1.5, 2.5));
    expect(faults("[1, 2, 3]")).toEqual(["no-table"]);
    expect(faults('{"a": ')).toEqual(["no-table"]);
    expect(faults("[".repeat(100_000))).toEqual(["no-table"]);
  });

  test("GHCN daily of several stations is refused", () => {
    const line = (station: string): string => `${station}202401PRCP${"   25  S".repeat(31)}`;
    expect(faults(`${line("XX000000001")}\n${line("XX000000002")}\n`)).toEqual(["several-stations"]);
  });

  test("Met Eireann, Dublin airport: a legend above the table names columns and units", () => {
    const read = understood(bytesOf("real_metie_dublin_airport_1993-01_1993-03.csv"));
    expect(read.report.site).toMatchObject({
      latitudeDeg: 53.43,
      longitudeDeg: -6.23,
      elevationM: 71,
      windHeightM: 10,
    });
    expect(reported(read, "wdsp")).toMatchObject({ keptAs: "windMPerS", unit: "knots" });
    expect(reported(read, "g_rad")).toMatchObject({ keptAs: "solarMJPerM2", unit: "J/cm2" });
    // The same days as converted for the annual ET0 checks, in data/weather/dublin-1993-2016.csv, rounded there to two decimals.
    const lines = dataText("weather/dublin-1993-2016.csv")
      .split("\n")
      .slice(0, weatherOf(read).days + 1);
    const parsed = parseDailyWeather(`${lines.join("\n")}\n`);
    if (!parsed.ok) throw new Error("must parse");
    const weather = weatherOf(read);
    expect(weather.startDate).toBe(parsed.weather.startDate);
    for (const column of ["tMinC", "tMaxC", "windMPerS", "solarMJPerM2", "sunshineH", "rainMm"] as const) {
      for (let d = 0; d < weather.days; d++)
        expect(weather[column][d], `${column} of day ${d}`).toBeCloseTo(parsed.weather[column][d], 1);
    }
  });
});

describe("what is written is read back", () => {
  test("the plain daily file of this library, by both readers", () => {
    const text = dataText("weather/malaga-2011.csv");
    const parsed = parseDailyWeather(text);
    if (!parsed.ok) throw new Error("must parse");
    expect(formatDailyWeather(weatherOf(understood(text)))).toBe(formatDailyWeather(parsed.weather));
  });

  test("marks, depths, end stamps and offsets survive", () => {
    const read = understood(
      "time (UTC+2),rain mm,tension 30cm kPa,tension 30cm kPa\n2024-05-13 01:00,T,>80,12\n2024-05-13 02:00,Acum,-3,13\n2024-05-13 03:00,2.5,20,\n",
      { stamp: "end" },
    );
    const text = formatStationTable(read.table);
    expect(text).toBe(
      "intervalEnd,rainMm,soilTensionKPa_30cm,soilTensionKPa_30cm_2\n2024-05-13T01:00+02:00,T,>80,12\n2024-05-13T02:00+02:00,Acum,3?,13\n2024-05-13T03:00+02:00,2.5,20,\n",
    );
    expect(formatStationTable(understood(text).table)).toBe(text);
  });

  test("nothing is asked about a file in the library's own names", () => {
    const odd = `date,rainMm\n${Array.from({ length: 12 }, (_, d) => `2024-05-${d + 10},${d === 5 ? 187 : 0}`).join("\n")}\n`;
    expect(understood(odd).report.cautions).toContainEqual(expect.objectContaining({ code: "spike" }));
    expect(asked(odd.replace("rainMm", "rain mm")).key).toBe("spikes");
  });
});
