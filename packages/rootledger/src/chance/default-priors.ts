import type { Comparison, Limits } from "../scenario/scenario.js";
import type { Correlation, Prior, Priors } from "./prior.js";

const own = "our choice, no source";

/** Deeper roots have less of their sum on top. Our choice, no source. */
const correlations: readonly Correlation[] = [{ a: "root-depth", b: "root-top-share", r: -0.5 }];

/**
 * What is usually unknown about a block, spread about what the comparison says. Published ranges where there are any; the
 * rest is our choice and says so. Roots stay inside the shallowest profile, and the pull limit drier than air-return.
 *
 * @param weatherYears seasons beside the comparison's own (`weatherYears`), drawn with equal chance; default none
 * @example defaultPriors(comparison).unknowns.map((prior) => prior.id)
 */
export function defaultPriors(
  comparison: Pick<Comparison, "block" | "soils">,
  { weatherYears = 0 }: { readonly weatherYears?: number } = {},
): Priors {
  const { tree, lines } = comparison.block;
  const { roots, limits } = tree;
  const profileCm = Math.min(...comparison.soils.map(({ horizons }) => horizons[horizons.length - 1].toCm));
  const { lateral } = roots;
  const width = lateral.kind === "disc" ? lateral.radiusCm : lateral.kind === "along-lines" ? lateral.halfWidthCm : 1;
  const room = roomOf(limits);
  const unknowns: Prior[] = [
    {
      id: "root-depth",
      unit: "cm",
      spread: about(roots.depthCm, 0.5, 1.5, profileCm),
      source: `${own}: half to one and a half times; published 50-100 cm (FAO-56 table 22, avocado), 90 % in 15 cm to most at 25-50 cm`,
    },
    {
      id: "root-top-share",
      unit: "fraction",
      spread: about(roots.topShare, 0.94, 1.06, 0.98),
      source: "Bender, UC Cooperative Extension: 80-90 % of avocado feeder roots in the top 20-25 cm",
    },
    {
      id: "root-width",
      unit: lateral.kind === "wetted-lanes" ? "factor" : "cm",
      spread: about(width, 0.6, 1.5),
      source: `${own}: the wetted width is seldom looked at below the surface`,
    },
    {
      id: "compensation-onset",
      unit: "fraction",
      spread: { kind: "uniform", from: 0.5, to: 1 },
      source: "Jarvis (1989), J. Hydrology 107:57-72, from memory: 0.5 to 1 (none)",
    },
    {
      id: "pull-limit",
      unit: "kPa",
      spread: {
        kind: "log-uniform",
        from: room.leastPull * limits.pullLimitKPa,
        to: 2 * limits.pullLimitKPa,
      },
      source:
        "15 to 40 kPa about the usual 20: Bender starts at 20, Newett sees little drawn beyond, Marsh & Gustafson (1969) watered at 40",
    },
    {
      id: "dry-limb",
      unit: "kPa",
      spread: { kind: "log-uniform", from: room.leastDry * limits.zeroUptakeKPa, to: 75 * limits.pullLimitKPa },
      source: `${own}: nothing more is drawn somewhere between 60 and 1500 kPa`,
    },
    {
      id: "air-limit",
      unit: "fraction",
      spread: {
        kind: "triangular",
        from: 0.8 * limits.airLimitFraction,
        mode: limits.airLimitFraction,
        to: 2 * limits.airLimitFraction,
      },
      source:
        "0.10 as a general rule (Wesseling & van Wijk 1957, from memory) to 0.17-0.20 for avocado (Ferreyra et al. 2007)",
    },
    {
      id: "air-return",
      unit: "kPa",
      spread: {
        kind: "triangular",
        from: 0.6 * limits.airReturnKPa,
        mode: limits.airReturnKPa,
        to: room.mostAirReturn * limits.airReturnKPa,
      },
      source: "3 to 8 kPa about the 5 of one clay under avocado (conference abstract)",
    },
    {
      id: "k-sat",
      unit: "factor",
      spread: { kind: "log-uniform", from: 1 / 3, to: 3 },
      source: `${own}: FAO's infiltration by texture spans two to five times within a class`,
    },
    {
      id: "structure",
      unit: "step",
      spread: { kind: "choice", values: [-1, 0, 1], weights: [1, 3, 1] },
      source: `${own}: one field in five is tighter, one looser than it was called; tight cannot be tighter, crumbly not looser`,
    },
    {
      id: "kcb",
      unit: "factor",
      spread: { kind: "normal", mean: 1, deviation: 0.12, from: 0.7, to: 1.3 },
      source:
        "0.50-0.85 about a mean of 0.63 by fruit load, sap flow of avocado in three regions of New Zealand, 2016-19 (abstract)",
    },
    {
      id: "uniformity",
      unit: "fraction",
      spread: about(lines.lowQuarterUniformityFraction, 0.8, 1.12, 0.98),
      source: "University of California (2019): 39 % of drip systems at 0.80 or less; above 0.90 excellent",
    },
  ];
  if (weatherYears > 0) {
    const years = Array.from({ length: weatherYears + 1 }, (_, i) => i);
    unknowns.push({
      id: "weather-year",
      unit: "index",
      spread: { kind: "choice", values: years, weights: years.map(() => 1) },
      source: "seasons of the weather record, each with equal chance; 0 is the comparison's own",
    });
  }
  return { unknowns, correlations };
}

/**
 * Factors on the limits within which air-return, pull limit and zero uptake stay in order all year, in every period and on days
 * of low demand, whatever is drawn of the others. A pull limit goes up to twice, hence the 2; 5 % apart.
 */
function roomOf(limits: Limits): { leastPull: number; leastDry: number; mostAirReturn: number } {
  const sets = [limits, ...(limits.periods ?? []).map((period) => ({ ...limits, ...period.limits }))];
  const mostAirReturn = Math.min(1.6, ...sets.map((set) => set.pullLimitKPa / set.airReturnKPa));
  const driest = (set: Limits): number => Math.max(set.pullLimitKPa, limits.pullLimitLowDemandKPa ?? 0);
  return {
    mostAirReturn,
    leastPull: Math.max(0.75, ...sets.map((set) => (1.05 * mostAirReturn * set.airReturnKPa) / set.pullLimitKPa)),
    leastDry: Math.max(
      (3 * limits.pullLimitKPa) / limits.zeroUptakeKPa,
      ...sets.map((set) => (1.05 * 2 * driest(set)) / set.zeroUptakeKPa),
    ),
  };
}

/** Triangular about what the scenario says, cut at `most`; where the scenario says `most` itself, that is its mode and end. */
function about(said: number, low: number, high: number, most = Number.POSITIVE_INFINITY): Prior["spread"] {
  const to = high * said < most ? high * said : most > said ? most : said;
  return { kind: "triangular", from: low * said, mode: said, to };
}
