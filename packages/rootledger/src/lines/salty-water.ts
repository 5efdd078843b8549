import { avocadoTroubleEcDsPerM } from "./fertigation-dose.js";

/** How irrigation water suits a crop that salt harms. */
export type SaltyWaterLevel = "ideal" | "not-exceeded" | "preferred" | "with-care" | "troublesome";

/** One item of a water analysis and what it means for trees. */
export interface SaltyWaterFinding {
  readonly quantity: "ecDsPerM" | "chlorideMgPerL";
  readonly value: number;
  readonly level: SaltyWaterLevel;
  /** The figure above which this level begins; absent for the lowest. */
  readonly beyond?: number;
  readonly source: string;
}

interface Limits {
  readonly lowest: SaltyWaterLevel;
  /** Rising figures and the level above each. */
  readonly above: readonly (readonly [figure: number, level: SaltyWaterLevel])[];
  readonly source: string;
}

const crowley = "Crowley (2008), California Avocado Society Yearbook 91";

/** Limits of crops for which some were found, by name as in the tables of salt tolerance. */
export const saltyWaterLimits: Readonly<
  Record<string, { readonly ecDsPerM: Limits; readonly chlorideMgPerL?: Limits }>
> = {
  avocado: {
    ecDsPerM: {
      lowest: "ideal",
      above: [
        [0.3, "preferred"],
        [0.5, "with-care"],
        [avocadoTroubleEcDsPerM, "troublesome"],
      ],
      source: `Western Australia agriculture department, annual water for avocado (0.3, 0.5); ${crowley} (0.75)`,
    },
    chlorideMgPerL: { lowest: "not-exceeded", above: [[100, "troublesome"]], source: crowley },
  },
  strawberry: {
    ecDsPerM: {
      lowest: "not-exceeded",
      above: [[1, "troublesome"]],
      source: "Hanson & Bendixen (2004), California Agriculture 58(1):48",
    },
  },
};

/**
 * What published limits say of a water for a crop, quantity by quantity; nothing for a crop without one. Chloride is judged here
 * alone: the model moves salt as one EC. Local advice and a soil analysis come before these limits.
 *
 * @throws RangeError if a value is negative or not finite.
 * @example saltyWaterFindings("avocado", { ecDsPerM: 0.9 })[0].level // "troublesome"
 */
export function saltyWaterFindings(
  crop: string,
  water: { readonly ecDsPerM?: number; readonly chlorideMgPerL?: number },
): readonly SaltyWaterFinding[] {
  const limits = Object.hasOwn(saltyWaterLimits, crop) ? saltyWaterLimits[crop] : undefined;
  return (["ecDsPerM", "chlorideMgPerL"] as const).flatMap((quantity): SaltyWaterFinding[] => {
    const value = water[quantity];
    if (value === undefined) return [];
    if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`saltyWaterFindings requires ${quantity} from 0: got ${value}`);
    }
    const known = limits?.[quantity];
    if (known === undefined) return [];
    const passed = known.above.filter(([figure]) => value > figure).at(-1);
    const { source } = known;
    if (passed === undefined) return [{ quantity, value, level: known.lowest, source }];
    return [{ quantity, value, level: passed[1], beyond: passed[0], source }];
  });
}
