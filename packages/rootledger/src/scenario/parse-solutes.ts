import { saltyWaterFindings } from "../lines/salty-water.js";
import { dateOf, dayNumber } from "../numeric/day-number.js";
import type { InjectionAmount, NitrogenDoses } from "../programme/injection.js";
import { maasHoffmanTable } from "../tree/salinity-table.js";
import type { DefaultUsed } from "../water/result.js";
import { type Fault, fault } from "./faults.js";
import { pick } from "./parse-default.js";
import type { Salt, SoilNitrogen } from "./scenario.js";
import type { InjectionFile, NitrogenDosesFile, SaltFile, SoilNitrogenFile } from "./schema-solutes.js";
import { solutesDefaults, startEceDefault } from "./solutes-defaults.js";

/** What the shape of `block.salt` cannot say. */
export function saltFaults(file: SaltFile, path: string): Fault[] {
  const { thresholdDsPerM, slopePerDsPerM, crop, response } = file;
  const found: Fault[] = [];
  const own = [
    ["thresholdDsPerM", thresholdDsPerM],
    ["slopePerDsPerM", slopePerDsPerM],
    ["crop", crop],
  ] as const;
  if (response !== undefined && response !== "threshold-slope") {
    const terms = { given: `${path}.response ${response}`, others: "threshold-slope" };
    return own.flatMap(([key, value]) =>
      value === undefined ? [] : [fault("only-beside", `${path}.${key}`, value, terms)],
    );
  }
  if (thresholdDsPerM !== undefined && slopePerDsPerM === undefined) {
    found.push(fault("missing", `${path}.slopePerDsPerM`, undefined, { expected: "a number, beside thresholdDsPerM" }));
  }
  if (slopePerDsPerM !== undefined && thresholdDsPerM === undefined) {
    found.push(fault("missing", `${path}.thresholdDsPerM`, undefined, { expected: "a number, beside slopePerDsPerM" }));
  }
  if (crop !== undefined && (thresholdDsPerM !== undefined || slopePerDsPerM !== undefined)) {
    const terms = { other: `${path}.thresholdDsPerM`, reason: "one tolerance, not two" };
    found.push(fault("not-beside", `${path}.crop`, crop, terms));
  }
  return found;
}

/** What the nitrogen of a programme cannot be checked without; undefined where the file's own is not readable. */
export interface DosePlace {
  readonly season: { readonly startDate: string; readonly days: number } | undefined;
  /** Open minutes of each run. */
  readonly runMinutes: readonly number[] | undefined;
}

/** What the shape of a programme's nitrogen cannot say. */
export function nitrogenFaults(file: NitrogenDosesFile, path: string, place: DosePlace): Fault[] {
  const found: Fault[] = [];
  if (file.throughWater) found.push(...injectionFaults(file.throughWater, `${path}.throughWater`, place));
  if (file.throughWater === undefined && file.byHand === undefined) {
    found.push(fault("missing", path, file, { expected: "throughWater or byHand" }));
  }
  const { season } = place;
  if (season === undefined) return found;
  const first = dayNumber(season.startDate);
  file.byHand?.forEach(({ date }, i) => {
    const day = dayNumber(date) - first;
    if (day >= 0 && day < season.days) return;
    const terms = { from: season.startDate, to: dateOf(first + season.days - 1) };
    found.push(fault("date-outside-season", `${path}.byHand[${i}].date`, date, terms));
  });
  return found;
}

function injectionFaults(file: InjectionFile, path: string, { runMinutes }: DosePlace): Fault[] {
  const found: Fault[] = [];
  if (amountsOf(file).length !== 1) {
    found.push(fault("exactly-one-of", path, file, { options: "mgPerL, gPerTreePerRun, kgPerHaByMonth" }));
  }
  const { afterMinutes, injectMinutes } = solutesDefaults;
  const needed = (file.afterMinutes ?? afterMinutes.value) + (file.injectMinutes ?? injectMinutes.value);
  const shortest = Math.min(...(runMinutes ?? []));
  if (needed > shortest + 1e-9) {
    const terms = { needed, shortest: Number(shortest.toPrecision(4)) };
    found.push(
      fault("injection-beyond-run", `${path}.injectMinutes`, file.injectMinutes ?? injectMinutes.value, terms),
    );
  }
  return found;
}

function amountsOf(file: InjectionFile): InjectionAmount[] {
  const { mgPerL, gPerTreePerRun, kgPerHaByMonth } = file;
  return [
    ...(mgPerL === undefined ? [] : [{ mgPerL }]),
    ...(gPerTreePerRun === undefined ? [] : [{ gPerTreePerRun }]),
    ...(kgPerHaByMonth === undefined ? [] : [{ kgPerHaByMonth }]),
  ];
}

/** Checked salt with its defaults filled in. */
export function filledSalt(file: SaltFile, path: string, used: DefaultUsed[]): Salt {
  const { waterEcDsPerM } = file;
  const startEce = startEceDefault(waterEcDsPerM);
  return {
    waterEcDsPerM,
    startEceDsPerM: pick(used, `${path}.startEceDsPerM`, file.startEceDsPerM, startEce),
    response: responseOf(file, path, used),
  };
}

function responseOf(file: SaltFile, path: string, used: DefaultUsed[]): Salt["response"] {
  const kind = pick<Salt["response"]["kind"]>(used, `${path}.response`, file.response, solutesDefaults.response);
  if (kind !== "threshold-slope") return { kind };
  const { thresholdDsPerM, slopePerDsPerM } = file;
  if (thresholdDsPerM !== undefined && slopePerDsPerM !== undefined) return { kind, thresholdDsPerM, slopePerDsPerM };
  const row = maasHoffmanTable[pick<string>(used, `${path}.crop`, file.crop, solutesDefaults.crop)];
  return {
    kind,
    thresholdDsPerM: row.thresholdDsPerM?.[0] ?? Number.NaN,
    slopePerDsPerM: row.slopePerDsPerM?.[0] ?? Number.NaN,
  };
}

/** What published limits say against the water, for the crop whose tolerance is taken. */
export function saltyWaterNotes({ crop, waterEcDsPerM, chlorideMgPerL }: SaltFile): string[] {
  const water = { ecDsPerM: waterEcDsPerM, ...(chlorideMgPerL === undefined ? {} : { chlorideMgPerL }) };
  const name = crop ?? solutesDefaults.crop.value;
  return saltyWaterFindings(name, water)
    .filter(({ level }) => level === "with-care" || level === "troublesome")
    .map(({ quantity, value, level, beyond, source }) => {
      const what = quantity === "ecDsPerM" ? `EC ${value} dS/m` : `chloride ${value} mg/L`;
      return `water of ${what} is beyond ${beyond}, ${level === "with-care" ? "to be used with care" : "troublesome"} for ${name} (${source}); leaching and local advice decide`;
    });
}

/** Checked nitrogen of the block with its defaults filled in. */
export function filledSoilNitrogen(file: SoilNitrogenFile, path: string, used: DefaultUsed[]): SoilNitrogen {
  const { waterMgPerL, startKgPerHa } = solutesDefaults;
  const { mostUptakeGPerTreeDay } = file;
  return {
    waterMgPerL: pick(used, `${path}.waterMgPerL`, file.waterMgPerL, waterMgPerL),
    startKgPerHa: pick(used, `${path}.startKgPerHa`, file.startKgPerHa, startKgPerHa),
    ...(mostUptakeGPerTreeDay === undefined ? {} : { mostUptakeGPerTreeDay }),
  };
}

/** Checked nitrogen of a programme with its defaults filled in; its injection must have an amount. */
export function filledNitrogen(file: NitrogenDosesFile, path: string, used: DefaultUsed[]): NitrogenDoses {
  const { throughWater, byHand } = file;
  const { afterMinutes, injectMinutes, ground } = solutesDefaults;
  const at = `${path}.throughWater`;
  return {
    ...(throughWater === undefined
      ? {}
      : {
          throughWater: {
            afterMinutes: pick(used, `${at}.afterMinutes`, throughWater.afterMinutes, afterMinutes),
            injectMinutes: pick(used, `${at}.injectMinutes`, throughWater.injectMinutes, injectMinutes),
            amount: amountsOf(throughWater)[0],
          },
        }),
    ...(byHand === undefined
      ? {}
      : {
          byHand: byHand.map((dose, i) => ({
            date: dose.date,
            gPerTree: dose.gPerTree,
            ground: pick<"under-canopy" | "rooted-ground" | "all-ground">(
              used,
              `${path}.byHand[${i}].ground`,
              dose.ground,
              ground,
            ),
          })),
        }),
  };
}
