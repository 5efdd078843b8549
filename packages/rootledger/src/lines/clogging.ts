/** What a water analysis says, as far as it is known. */
export interface WaterAnalysis {
  readonly suspendedSolidsMgPerL?: number;
  readonly pH?: number;
  readonly dissolvedSolidsMgPerL?: number;
  readonly manganeseMgPerL?: number;
  readonly ironMgPerL?: number;
  readonly hydrogenSulphideMgPerL?: number;
  readonly bacteriaPerMl?: number;
}

/** Risk that emitters clog. */
export type CloggingRisk = "little" | "some" | "severe";

/** One item of a water analysis and its risk. */
export interface CloggingFinding {
  readonly quantity: keyof WaterAnalysis;
  readonly value: number;
  readonly risk: CloggingRisk;
}

/**
 * Limits between little and some, and between some and severe, restriction on use for localized irrigation.
 * Source: Ayers & Westcot (1985), FAO Irrigation and Drainage Paper 29 rev. 1, table 19, after Nakayama (1982); read in a page
 * that quotes it.
 */
export const cloggingLimits: {
  readonly [K in keyof Required<WaterAnalysis>]: readonly [some: number, severe: number];
} = {
  suspendedSolidsMgPerL: [50, 100],
  pH: [7, 8],
  dissolvedSolidsMgPerL: [500, 2000],
  manganeseMgPerL: [0.1, 1.5],
  ironMgPerL: [0.1, 1.5],
  hydrogenSulphideMgPerL: [0.5, 2],
  bacteriaPerMl: [10_000, 50_000],
};

/**
 * How likely a water is to clog emitters, quantity by quantity in the order of the table; the worst one rules. What the
 * analysis leaves out is not judged.
 *
 * @throws RangeError if a value is negative or not finite, or pH is above 14.
 * @example cloggingFindings({ ironMgPerL: 0.4 })[0].risk // "some"
 */
export function cloggingFindings(analysis: WaterAnalysis): CloggingFinding[] {
  return (Object.keys(cloggingLimits) as (keyof WaterAnalysis)[]).flatMap((quantity): CloggingFinding[] => {
    const value = analysis[quantity];
    if (value === undefined) return [];
    if (!(value >= 0 && value < Number.POSITIVE_INFINITY) || (quantity === "pH" && value > 14)) {
      throw new RangeError(
        `cloggingFindings requires ${quantity} from 0${quantity === "pH" ? " to 14" : ""}: got ${value}`,
      );
    }
    const [some, severe] = cloggingLimits[quantity];
    return [{ quantity, value, risk: value < some ? "little" : value <= severe ? "some" : "severe" }];
  });
}

/** The worst of several findings; `little` of none. @example worstRisk(cloggingFindings({ ironMgPerL: 2, pH: 6.5 })) // "severe" */
export function worstRisk(findings: readonly CloggingFinding[]): CloggingRisk {
  if (findings.some(({ risk }) => risk === "severe")) return "severe";
  return findings.some(({ risk }) => risk === "some") ? "some" : "little";
}

/** What to do about a finding. Codes; words are made elsewhere. */
export type WaterHint =
  | "filter-finer"
  | "settle-first"
  | "acid"
  | "aerate-and-settle"
  | "chlorine"
  | "flush-often"
  | "larger-emitter";

const hintsOf: { readonly [K in keyof Required<WaterAnalysis>]: readonly WaterHint[] } = {
  suspendedSolidsMgPerL: ["settle-first", "filter-finer", "flush-often"],
  pH: ["acid"],
  dissolvedSolidsMgPerL: ["acid", "flush-often"],
  manganeseMgPerL: ["aerate-and-settle", "filter-finer"],
  ironMgPerL: ["aerate-and-settle", "filter-finer"],
  hydrogenSulphideMgPerL: ["aerate-and-settle"],
  bacteriaPerMl: ["chlorine", "flush-often"],
};

/**
 * What usually helps against each risk above little, without repeats; where any is severe, a larger emitter as well.
 * Common practice of the trade, no source. Acid and chlorine: label first, never together, backflow guarded, local codes and
 * licensed practice decide.
 *
 * @example waterHints(cloggingFindings({ pH: 7.6 })) // ["acid"]
 */
export function waterHints(findings: readonly CloggingFinding[]): WaterHint[] {
  const hints = new Set<WaterHint>();
  for (const { quantity, risk } of findings) {
    if (risk === "little") continue;
    for (const hint of hintsOf[quantity]) hints.add(hint);
    if (risk === "severe") hints.add("larger-emitter");
  }
  return [...hints];
}
