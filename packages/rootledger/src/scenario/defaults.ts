import type { Structure } from "../ground/structure.js";

/** A value used where the file is silent, with the place it comes from and what others have published. */
export interface Default<T extends number | string> {
  readonly value: T;
  readonly source: string;
  readonly published: string;
}

const fao56 = "Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56";
const ownChoice = "our choice; no published value";

/**
 * Every default of the scenario file. Tree values are those of a mature avocado. Each one that a file leaves out is listed
 * in `defaultsUsed` by `parseScenario` and `parseComparison`.
 */
export const defaults: {
  readonly rootDepthCm: Default<number>;
  readonly topShare: Default<number>;
  readonly lateralKind: Default<"wetted-lanes">;
  readonly lateralHalfWidthCm: Default<number>;
  readonly compensationOnset: Default<number>;
  readonly pullLimitKPa: Default<number>;
  readonly zeroUptakeKPa: Default<number>;
  readonly airLimitFraction: Default<number>;
  readonly airZeroFraction: Default<number>;
  readonly airReturnKPa: Default<number>;
  readonly lowQuarterUniformityFraction: Default<number>;
  readonly pluggedPerTree: Default<number>;
  readonly drainHours: Default<number>;
  readonly lowTreesFraction: Default<number>;
  readonly bottomKind: Default<"free-drainage">;
  readonly structure: Default<Structure>;
  readonly windHeightM: Default<number>;
  readonly et0Method: Default<"penman-monteith">;
  readonly rainIntensityMmPerH: Default<number>;
  readonly firstDay: Default<number>;
  readonly pulses: Default<number>;
  readonly startTensionKPa: Default<number>;
  readonly startKind: Default<"settled">;
  readonly engine: Default<"bucket">;
} = {
  rootDepthCm: {
    value: 60,
    source: `${ownChoice}: deep enough for the 10-20 % of avocado roots below the top 20-25 cm`,
    published: "50-100 cm (FAO-56 table 22, avocado)",
  },
  topShare: {
    value: 0.85,
    source: "Bender, UC Cooperative Extension: 80-90 % of avocado feeder roots in the top 20-25 cm",
    published: "0.80-0.90",
  },
  lateralKind: {
    value: "wetted-lanes",
    source: `${ownChoice}: roots of a mature tree follow the ground that has been wetted for years, as far as layout, emitter and soil wet it`,
    published:
      "diameters wetted by one emitter of 4 L/h: 0.5, 0.9, 1.1 m in coarse, medium, fine soil (Keller & Bliesner 1990, table 19.1, from memory)",
  },
  lateralHalfWidthCm: {
    value: 40,
    source: `${ownChoice}: about the half-width that daily drip keeps wet in medium soil`,
    published: "none",
  },
  compensationOnset: {
    value: 0.5,
    source: "Jarvis (1989), J. Hydrology 107:57-72, from memory",
    published: "0.5-1 (1: no compensation)",
  },
  pullLimitKPa: {
    value: 20,
    source: "Newett, Queensland, and Agriculture Victoria: avocado draws little beyond 20 kPa",
    published: "20-40 kPa (Marsh & Gustafson 1969 watered at 40)",
  },
  zeroUptakeKPa: {
    value: 100,
    source: `${ownChoice}: no curve has been measured for avocado`,
    published: "60-1500 kPa",
  },
  airLimitFraction: {
    value: 0.1,
    source: "Wesseling & van Wijk (1957), from memory",
    published: "0.10-0.20 (Ferreyra et al. 2007: avocado stomata respond below 0.17)",
  },
  airZeroFraction: {
    value: 0.02,
    source: ownChoice,
    published: "none",
  },
  airReturnKPa: {
    value: 5,
    source: "soil oxygen under avocado in a clay of Israel (conference abstract): oxygen is back at about 50 mbar",
    published: "3-8 kPa; one site",
  },
  lowQuarterUniformityFraction: {
    value: 0.85,
    source: "California Polytechnic State University irrigation evaluations, 329 fields: drip 0.85",
    published: "0.80-0.90 average, above 0.90 excellent (University of California 2019)",
  },
  pluggedPerTree: {
    value: 0,
    source: "every emitter is open unless the file says otherwise",
    published: "none",
  },
  drainHours: {
    value: 4,
    source: `${ownChoice}: within what Agriculture Victoria saw`,
    published: "low emitters flow between 60-minute pulses and up to 24 h after (Agriculture Victoria, drip drainage)",
  },
  lowTreesFraction: {
    value: 0.1,
    source: ownChoice,
    published: "none",
  },
  bottomKind: {
    value: "free-drainage",
    source: `${ownChoice}: no water table or tight layer is known of`,
    published: "none",
  },
  structure: {
    value: "ordinary",
    source: "no change to the curve of the texture class",
    published: "none",
  },
  windHeightM: {
    value: 2,
    source: `${fao56}, eq. 47: height of the standard wind speed`,
    published: "2 m; most airport masts 10 m",
  },
  et0Method: {
    value: "penman-monteith",
    source: `${fao56}, ch. 2: the sole standard method`,
    published: "none",
  },
  rainIntensityMmPerH: {
    value: 5,
    source: `${ownChoice}: daily records do not hold it`,
    published: "none",
  },
  firstDay: {
    value: 0,
    source: "the first run is on the first day of the season",
    published: "none",
  },
  pulses: {
    value: 1,
    source: "a run is not split unless the file says so",
    published: "none",
  },
  startTensionKPa: {
    value: 10,
    source: "Agriculture Victoria: field capacity at 8-10 kPa",
    published: "5-15 kPa",
  },
  startKind: {
    value: "settled",
    source: `${ownChoice}: the season starts from the state that the programme itself leaves behind`,
    published: "none",
  },
  engine: {
    value: "bucket",
    source: `${ownChoice}: fast enough to try programmes with; its distance from the slow one is part of every verdict`,
    published: "none",
  },
};
