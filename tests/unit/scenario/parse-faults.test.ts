import { parseComparison, parseScenario } from "rootledger/scenario";
import { describe, expect, it } from "vitest";
import { demoFiles, demoJson, type Editable } from "../../support/demo-files.js";

type Spoil = (file: Editable) => void;

const clayProfile = [
  { toCm: 40, texture: "loam" },
  { toCm: 30, texture: "clay" },
  { toCm: 100, texture: "sand" },
];

/** One thing wrong with the demo scenario, and the one fault it must give. */
const scenarioCases: readonly [
  what: string,
  spoil: Spoil,
  code: string,
  path: string,
  received: string,
  rule: RegExp,
][] = [
  ["no format", (f) => delete f.format, "missing", "format", "nothing", /is required/],
  [
    "a newer format",
    (f) => {
      f.format = 2;
    },
    "unknown-format",
    "format",
    "2",
    /1$/,
  ],
  [
    "an older format",
    (f) => {
      f.format = 0;
    },
    "unknown-format",
    "format",
    "0",
    /1$/,
  ],
  [
    "a half format",
    (f) => {
      f.format = 1.5;
    },
    "not-one-of",
    "format",
    "1.5",
    /one of 1/,
  ],
  ["no soil", (f) => delete f.soil, "missing", "soil", "nothing", /an object/],
  [
    "no name",
    (f) => {
      f.name = "";
    },
    "too-few",
    "name",
    '""',
    /1 character$/,
  ],
  [
    "negative flow",
    (f) => {
      f.block.lines.emitterFlowLPerH = -1.6;
    },
    "not-above-minimum",
    "block.lines.emitterFlowLPerH",
    "-1.6",
    /above 0/,
  ],
  [
    "flow as text",
    (f) => {
      f.block.lines.emitterFlowLPerH = "1.6";
    },
    "wrong-type",
    "block.lines.emitterFlowLPerH",
    '"1.6"',
    /a number/,
  ],
  [
    "flow beyond reason",
    (f) => {
      f.block.lines.emitterFlowLPerH = 1600;
    },
    "above-maximum",
    "block.lines.emitterFlowLPerH",
    "1600",
    /at most 60/,
  ],
  [
    "uniformity in percent",
    (f) => {
      f.block.lines.lowQuarterUniformityFraction = 85;
    },
    "above-maximum",
    "block.lines.lowQuarterUniformityFraction",
    "85",
    /at most 1/,
  ],
  [
    "no lines",
    (f) => {
      f.block.lines.offsetsM = [];
    },
    "too-few",
    "block.lines.offsetsM",
    "an empty list",
    /1 entry/,
  ],
  [
    "one-sided line",
    (f) => {
      f.block.lines.offsetsM = [0.4];
    },
    "not-mirrored",
    "block.lines.offsetsM[0]",
    "0.4",
    /-0.4 m.*half the row/,
  ],
  [
    "line beyond the alley",
    (f) => {
      f.block.lines.offsetsM = [0, -3, 3];
      f.block.rowSpacingM = 6;
      f.block.lines.offsetsM = [-3.2, 3.2];
    },
    "line-beyond-half-row",
    "block.lines.offsetsM[0]",
    "-3.2",
    /half the row spacing, 3 m/,
  ],
  [
    "lines almost on one another",
    (f) => {
      f.block.lines.offsetsM = [-0.51, -0.5, 0.5, 0.51];
    },
    "lines-too-close",
    "block.lines.offsetsM[0]",
    "-0.51",
    /0.04 m from the next/,
  ],
  [
    "emitters too far apart",
    (f) => {
      f.block.lines.emitterSpacingM = 5;
    },
    "emitters-too-far-apart",
    "block.lines.emitterSpacingM",
    "5",
    /tree spacing, 4 m/,
  ],
  [
    "unknown key",
    (f) => {
      f.block.lines.emiterSpacingM = 0.4;
    },
    "unknown-key",
    "block.lines.emiterSpacingM",
    "0.4",
    /did you mean emitterSpacingM/,
  ],
  [
    "a key like none",
    (f) => {
      f.soil.colour = "red";
    },
    "unknown-key-no-likeness",
    "soil.colour",
    '"red"',
    /known are name, horizons/,
  ],
  [
    "a key of the other lateral kind",
    (f) => {
      f.block.tree.roots = { lateral: { kind: "disc", radiusCm: 90, halfWidthCm: 60 } };
    },
    "unknown-key",
    "block.tree.roots.lateral.halfWidthCm",
    "60",
    /did you mean halfWidthCm|known/,
  ],
  [
    "unknown lateral kind",
    (f) => {
      f.block.tree.roots = { lateral: { kind: "square" } };
    },
    "not-one-of",
    "block.tree.roots.lateral.kind",
    '"square"',
    /along-lines, disc/,
  ],
  [
    "layers out of order",
    (f) => {
      f.soil.horizons = clayProfile;
    },
    "layers-not-rising",
    "soil.horizons[1].toCm",
    "30",
    /ends at 40 cm/,
  ],
  [
    "unknown texture",
    (f) => {
      f.soil.horizons[0].texture = "clay lome";
    },
    "unknown-texture",
    "soil.horizons[0].texture",
    '"clay lome"',
    /did you mean clay loam/,
  ],
  [
    "a texture like none",
    (f) => {
      f.soil.horizons[0].texture = "chocolate";
    },
    "not-one-of",
    "soil.horizons[0].texture",
    '"chocolate"',
    /one of sand, /,
  ],
  [
    "neither texture nor curve",
    (f) => {
      f.soil.horizons = [{ toCm: 100 }];
    },
    "exactly-one-of",
    "soil.horizons[0]",
    "an object",
    /exactly one of texture, particles, vanGenuchten, brooksCorey, points/,
  ],
  [
    "roots below the profile",
    (f) => {
      f.soil.horizons[0].toCm = 50;
    },
    "profile-above-roots",
    "soil.horizons[0].toCm",
    "50",
    /roots, 60 cm/,
  ],
  [
    "a boundary almost at the roots' end",
    (f) => {
      f.soil.horizons = [
        { toCm: 60.2, texture: "clay" },
        { toCm: 100, texture: "sand" },
      ];
    },
    "too-near-roots",
    "soil.horizons[0].toCm",
    "60.2",
    /60 cm/,
  ],
  [
    "a wrong structure word",
    (f) => {
      f.soil.horizons[0].structure = "loose";
    },
    "not-one-of",
    "soil.horizons[0].structure",
    '"loose"',
    /tight, ordinary, crumbly/,
  ],
  [
    "residual above saturated",
    (f) => {
      f.soil.horizons[0] = {
        toCm: 100,
        vanGenuchten: { thetaResidual: 0.4, thetaSaturated: 0.3, alphaPerCm: 0.02, n: 1.4, kSatCmPerH: 1 },
      };
    },
    "not-below",
    "soil.horizons[0].vanGenuchten.thetaResidual",
    "0.4",
    /below thetaSaturated, 0.3/,
  ],
  [
    "n of 1",
    (f) => {
      f.soil.horizons[0] = {
        toCm: 100,
        vanGenuchten: { thetaResidual: 0.1, thetaSaturated: 0.4, alphaPerCm: 0.02, n: 1, kSatCmPerH: 1 },
      };
    },
    "not-above-minimum",
    "soil.horizons[0].vanGenuchten.n",
    "1",
    /above 1/,
  ],
  [
    "structure beside an own curve",
    (f) => {
      f.soil.horizons[0] = {
        toCm: 100,
        structure: "tight",
        vanGenuchten: { thetaResidual: 0.1, thetaSaturated: 0.4, alphaPerCm: 0.02, n: 1.4, kSatCmPerH: 1 },
      };
    },
    "only-beside",
    "soil.horizons[0].structure",
    '"tight"',
    /left out/,
  ],
  [
    "a curve set beside particles",
    (f) => {
      f.soil.horizons[0] = {
        toCm: 100,
        curveSet: "cosby-1984",
        particles: { sandFraction: 0.4, clayFraction: 0.2, organicMatterFraction: 0.025 },
      };
    },
    "only-beside",
    "soil.horizons[0].curveSet",
    '"cosby-1984"',
    /goes with texture only/,
  ],
  [
    "a set without the class",
    (f) => {
      f.soil.horizons[0] = { toCm: 100, texture: "silt", curveSet: "clapp-hornberger-1978" };
    },
    "no-such-curve",
    "soil.horizons[0].curveSet",
    '"clapp-hornberger-1978"',
    /requires a set with silt/,
  ],
  [
    "more sand and clay than there is soil",
    (f) => {
      f.soil.horizons[0] = {
        toCm: 100,
        particles: { sandFraction: 0.7, clayFraction: 0.5, organicMatterFraction: 0.02 },
      };
    },
    "no-such-curve",
    "soil.horizons[0].particles",
    "an object",
    /up to 1: got 1.2/,
  ],
  [
    "a wilting point above field capacity",
    (f) => {
      f.soil.horizons[0] = {
        toCm: 100,
        texture: "loam",
        limits: { fieldCapacity: 0.2, fieldCapacityTensionKPa: 10, wiltingPoint: 0.25 },
      };
    },
    "no-such-curve",
    "soil.horizons[0].limits",
    "an object",
    /wiltingPoint < fieldCapacity/,
  ],
  [
    "a table that begins dry",
    (f) => {
      f.soil.horizons[0] = {
        toCm: 100,
        points: [
          { tensionKPa: 1, theta: 0.4, conductivityCmPerH: 1 },
          { tensionKPa: 10, theta: 0.3, conductivityCmPerH: 0.1 },
        ],
      };
    },
    "no-such-curve",
    "soil.horizons[0].points",
    "a list of 2",
    /headCm 0 in the first point/,
  ],
  [
    "pull limit wetter than air-return",
    (f) => {
      f.block.tree.limits = { pullLimitKPa: 4 };
    },
    "not-drier",
    "block.tree.limits.pullLimitKPa",
    "4",
    /airReturnKPa, 5 kPa/,
  ],
  [
    "zero uptake wetter than the pull limit",
    (f) => {
      f.block.tree.limits = { zeroUptakeKPa: 20 };
    },
    "not-drier",
    "block.tree.limits.zeroUptakeKPa",
    "20",
    /pullLimitKPa, 20 kPa/,
  ],
  [
    "no air before little air",
    (f) => {
      f.block.tree.limits = { airZeroFraction: 0.2 };
    },
    "not-below",
    "block.tree.limits.airZeroFraction",
    "0.2",
    /airLimitFraction, 0.1/,
  ],
  [
    "all roots in the top 20 cm",
    (f) => {
      f.block.tree.roots = { topShare: 1 };
    },
    "not-below-maximum",
    "block.tree.roots.topShare",
    "1",
    /below 1/,
  ],
  [
    "Kcb dates out of order",
    (f) => {
      f.block.tree.kcb[1].date = "2025-09-15";
    },
    "dates-not-rising",
    "block.tree.kcb[1].date",
    '"2025-09-15"',
    /later than .* 2025-09-15/,
  ],
  [
    "no such day",
    (f) => {
      f.block.tree.kcb[0].date = "2025-02-29";
    },
    "not-a-date",
    "block.tree.kcb[0].date",
    '"2025-02-29"',
    /YYYY-MM-DD/,
  ],
  [
    "no days",
    (f) => {
      f.season.days = 0;
    },
    "below-minimum",
    "season.days",
    "0",
    /at least 1/,
  ],
  [
    "half a day",
    (f) => {
      f.season.days = 10.5;
    },
    "wrong-type",
    "season.days",
    "10.5",
    /a whole number/,
  ],
  [
    "season before the weather",
    (f) => {
      f.season.startDate = "2025-09-30";
    },
    "weather-too-short",
    "season",
    "2025-09-30 to 2025-12-22",
    /2025-10-01 to 2026-04-28/,
  ],
  [
    "season beyond the weather",
    (f) => {
      f.season.days = 150;
    },
    "weather-too-short",
    "season",
    "2025-12-01 to 2026-04-29",
    /2025-10-01 to 2026-04-28/,
  ],
  [
    "24 o'clock",
    (f) => {
      f.programme.runs[0].start = "24:00";
    },
    "not-a-clock-time",
    "programme.runs[0].start",
    '"24:00"',
    /00:00 to 23:59/,
  ],
  [
    "25 pulses",
    (f) => {
      f.programme.runs[0].pulses = 25;
    },
    "above-maximum",
    "programme.runs[0].pulses",
    "25",
    /at most 24/,
  ],
  [
    "pulses without a gap",
    (f) => {
      f.programme.runs[0].pulses = 2;
    },
    "gap-missing",
    "programme.runs[0].gapMinutes",
    "nothing",
    /2 pulses/,
  ],
  [
    "minutes and litres",
    (f) => {
      f.programme.runs[0].minutes = 60;
    },
    "exactly-one-of",
    "programme.runs[0]",
    "an object",
    /minutes, litresPerTree/,
  ],
  [
    "no amount",
    (f) => delete f.programme.runs[0].litresPerTree,
    "exactly-one-of",
    "programme.runs[0]",
    "an object",
    /minutes, litresPerTree/,
  ],
  [
    "a run after the season",
    (f) => {
      f.programme.runs[0].firstDay = 84;
    },
    "run-outside-season",
    "programme.runs[0].firstDay",
    "84",
    /0 to 83/,
  ],
  [
    "two runs at once",
    (f) => {
      f.programme.runs.push({ start: "09:00", everyDays: 2, minutes: 30 });
    },
    "runs-overlap",
    "programme.runs[1].start",
    '"09:00"',
    /on day 0 .* runs\[0\]/,
  ],
  [
    "a run over midnight into the next",
    (f) => {
      f.programme.runs = [
        { start: "06:00", everyDays: 1, minutes: 60 },
        { start: "20:00", everyDays: 3, firstDay: 2, minutes: 660 },
      ];
    },
    "runs-overlap",
    "programme.runs[0].start",
    '"06:00"',
    /on day 3 .* runs\[1\]/,
  ],
  [
    "a daily run longer than a day",
    (f) => {
      f.programme.runs = [{ start: "06:00", everyDays: 1, minutes: 1500 }];
    },
    "runs-overlap",
    "programme.runs[0].start",
    '"06:00"',
    /its own run before/,
  ],
  [
    "a run between two pulses of another",
    (f) => {
      f.programme.runs = [
        { start: "06:00", everyDays: 1, minutes: 60, pulses: 2, gapMinutes: 240 },
        { start: "08:00", everyDays: 1, minutes: 30 },
      ];
    },
    "runs-overlap",
    "programme.runs[1].start",
    '"08:00"',
    /runs\[0\]/,
  ],
  [
    "no weather file",
    (f) => {
      f.weather.file = "other.csv";
    },
    "file-not-given",
    "weather.file",
    '"other.csv"',
    /can be read/,
  ],
  [
    "latitude beyond the polar circle",
    (f) => {
      f.weather.latitudeDeg = -90;
    },
    "below-minimum",
    "weather.latitudeDeg",
    "-90",
    /-66/,
  ],
  [
    "wrong method",
    (f) => {
      f.weather.et0Method = "guess";
    },
    "not-one-of",
    "weather.et0Method",
    '"guess"',
    /penman-monteith, asce-short, hargreaves-samani, pan, given/,
  ],
  [
    "given ET0 that is not there",
    (f) => {
      f.weather.et0Method = "given";
    },
    "missing-value",
    "weather.csv 2025-12-01, et0Mm",
    "nothing",
    /83 more days/,
  ],
];

describe("one thing wrong gives one fault with its path, what was received and the rule", () => {
  it.each(scenarioCases)("%s", (_, spoil, code, path, received, rule) => {
    const file = demoJson("scenario");
    spoil(file);
    const parsed = parseScenario(file, demoFiles);
    expect(parsed.ok).toBe(false);
    if (parsed.ok) return;
    const first = parsed.faults[0];
    expect({ code: first?.code, path: first?.path, received: first?.received }).toEqual({ code, path, received });
    expect(first?.rule).toMatch(rule);
  });

  it.each([
    [
      "the only fault",
      (f: Editable) => {
        f.block.lines.emitterFlowLPerH = -1.6;
      },
    ],
    [
      "no second fault from a part that could not be read",
      (f: Editable) => {
        f.block.lines.offsetsM = "two";
      },
    ],
    [
      "nor from a season that could not be read",
      (f: Editable) => {
        f.season.startDate = "soon";
      },
    ],
  ])("%s", (_, spoil) => {
    const file = demoJson("scenario");
    spoil(file);
    const parsed = parseScenario(file, demoFiles);
    expect(parsed.ok ? [] : parsed.faults.map((fault) => fault.path)).toHaveLength(1);
  });
});

describe("all faults at once", () => {
  it("reports shape, contradictions and weather together", () => {
    const file = demoJson("scenario");
    file.block.lines.emitterFlowLPerH = -1;
    file.block.tree.limits = { pullLimitKPa: 3 };
    file.soil.horizons = clayProfile;
    file.programme.runs[0].pulses = 2;
    file.surprise = true;
    const weather = demoFiles["weather.csv"].replace("2025-10-02,9.2,22.8", "2025-10-02,32.8,22.8");
    const parsed = parseScenario(file, { "weather.csv": weather });
    expect(parsed.ok ? [] : parsed.faults.map((fault) => fault.path).sort()).toEqual(
      [
        "surprise",
        "block.lines.emitterFlowLPerH",
        "block.tree.limits.pullLimitKPa",
        "soil.horizons[1].toCm",
        "programme.runs[0].gapMinutes",
        "weather.csv line 3, tMinC",
      ].sort(),
    );
  });

  it.each([
    ["a number", 42],
    ["nothing", null],
    ["a list", []],
    ["text", "scenario"],
  ])("%s is not a scenario", (_, input) => {
    const parsed = parseScenario(input, demoFiles);
    expect(parsed.ok ? [] : parsed.faults.map(({ code, path }) => [code, path])).toEqual([["wrong-type", ""]]);
  });
});

describe("comparison files", () => {
  const cases: readonly [string, Spoil, string, string][] = [
    [
      "one programme",
      (f) => {
        f.programmes.length = 1;
      },
      "too-few",
      "programmes",
    ],
    [
      "five programmes",
      (f) => {
        f.programmes = Array.from({ length: 5 }, (_, i) => ({ ...f.programmes[1], name: `p${i}` }));
      },
      "too-many",
      "programmes",
    ],
    [
      "no soil",
      (f) => {
        f.soils = [];
      },
      "too-few",
      "soils",
    ],
    [
      "five soils",
      (f) => {
        f.soils = Array.from({ length: 5 }, (_, i) => ({ ...f.soils[0], name: `s${i}` }));
      },
      "too-many",
      "soils",
    ],
    [
      "two soils of one name",
      (f) => {
        f.soils[1].name = "clay";
      },
      "same-name",
      "soils[1].name",
    ],
    [
      "two programmes of one name",
      (f) => {
        f.programmes[2].name = f.programmes[0].name;
      },
      "same-name",
      "programmes[2].name",
    ],
    ["an empty remark", (f) => (f.remark = ""), "too-few", "remark"],
    [
      "a scenario's keys",
      (f) => {
        f.soil = f.soils[0];
      },
      "unknown-key",
      "soil",
    ],
    [
      "layers out of order in the second soil",
      (f) => {
        f.soils[1].horizons = clayProfile;
      },
      "layers-not-rising",
      "soils[1].horizons[1].toCm",
    ],
    [
      "a flow of its own that makes runs overlap",
      (f) => {
        f.programmes[1].emitterFlowLPerH = 0.2;
      },
      "runs-overlap",
      "programmes[1].runs[0].start",
    ],
  ];
  it.each(cases)("%s", (_, spoil, code, path) => {
    const file = demoJson("comparison");
    spoil(file);
    const parsed = parseComparison(file, demoFiles);
    expect(parsed.ok ? [] : parsed.faults.map((fault) => [fault.code, fault.path])).toEqual([[code, path]]);
  });
});
