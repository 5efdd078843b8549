import { type Campbell, campbellCurve } from "./brooks-corey.js";
import type { SoilCurve } from "./curve.js";
import type { Texture } from "./texture.js";

/** Where the class means come from. */
export const cosbySource = "Cosby, Hornberger, Clapp & Ginn (1984), WRR 20:682-690, regressions (from memory)";

const cmPerInch = 2.54;

/**
 * Power-law parameters from texture, regressions on two fractions: b = 3.10 + 0.157 clay - 0.003 sand;
 * log10 psi(cm) = 1.54 - 0.0095 sand + 0.0063 silt; log10 kSat(inch/h) = -0.60 + 0.0126 sand - 0.0064 clay;
 * thetaS(%) = 50.5 - 0.142 sand - 0.037 clay; all texture in percent.
 * @throws RangeError when the fractions are outside 0-1. @example cosbyCampbell({ sandFraction: 0.4, clayFraction: 0.2 }).b // 6.12
 */
export function cosbyCampbell(texture: Texture): Campbell {
  const { sand, silt, clay } = percents(texture);
  return {
    b: 3.1 + 0.157 * clay - 0.003 * sand,
    airEntryCm: 10 ** (1.54 - 0.0095 * sand + 0.0063 * silt),
    kSatCmPerH: cmPerInch * 10 ** (-0.6 + 0.0126 * sand - 0.0064 * clay),
    thetaSaturated: (50.5 - 0.142 * sand - 0.037 * clay) / 100,
  };
}

/**
 * The same from one fraction each: b = 2.91 + 0.159 clay; log10 psi = 1.88 - 0.0131 sand;
 * log10 kSat = -0.884 + 0.0153 sand; thetaS = 48.9 - 0.126 sand.
 * @throws RangeError when the fractions are outside 0-1. @example cosbyCampbellSimple({ sandFraction: 0.4, clayFraction: 0.2 }).b // 6.09
 */
export function cosbyCampbellSimple(texture: Texture): Campbell {
  const { sand, clay } = percents(texture);
  return {
    b: 2.91 + 0.159 * clay,
    airEntryCm: 10 ** (1.88 - 0.0131 * sand),
    kSatCmPerH: cmPerInch * 10 ** (-0.884 + 0.0153 * sand),
    thetaSaturated: (48.9 - 0.126 * sand) / 100,
  };
}

/** Power-law curve from texture. @example cosbyCurve("my soil", { sandFraction: 0.4, clayFraction: 0.2 }) */
export const cosbyCurve = (name: string, texture: Texture): SoilCurve =>
  campbellCurve(name, cosbyCampbell(texture), cosbySource);

function percents({ sandFraction, clayFraction }: Texture): { sand: number; silt: number; clay: number } {
  if (!(sandFraction >= 0 && clayFraction >= 0 && sandFraction + clayFraction <= 1 + 1e-9)) {
    throw new RangeError(
      `cosby requires sandFraction and clayFraction from 0, together up to 1: got ${sandFraction}, ${clayFraction}`,
    );
  }
  const sand = 100 * sandFraction;
  const clay = 100 * clayFraction;
  return { sand, clay, silt: 100 - sand - clay };
}
