import { withLeaching } from "./localized-cover.js";
import { type NeedArea, type NeedCover, type NeedTree, needArea } from "./need-area.js";

/**
 * What the weather figure is. `et0`: reference evapotranspiration, the coefficient is Kc. `pan`: evaporation of a class A pan, times its Kp
 * gives ET0, the coefficient is Kc (FAO-56, Allen et al. 1998, eq. 55). `pan-factor`: pan evaporation, the coefficient is a crop factor that goes with the
 * pan; it is no Kc.
 */
export type NeedReference =
  | { readonly kind: "et0" }
  | { readonly kind: "pan"; readonly panCoefficient: number }
  | { readonly kind: "pan-factor" };

/** A month, or any span of days with one mean weather figure and one coefficient. */
export interface NeedPeriod {
  readonly name: string;
  readonly days: number;
  readonly referenceMmPerDay: number;
  /** The same on a hot day; left out, the mean times `hotDayRatio`. */
  readonly hotDayMmPerDay?: number;
  readonly coefficient: number;
  /** Rain of the whole span that roots got, L per tree; see `rainOnRoots`. */
  readonly usefulRainLPerTree?: number;
}

/** What need is reckoned from. */
export interface NeedQuestion {
  readonly tree: NeedTree;
  readonly cover: NeedCover;
  readonly reference: NeedReference;
  readonly periods: readonly NeedPeriod[];
  readonly hotDayRatio: number;
  /** Water used over water applied, for spread between emitters and losses on the way, (0, 1]. */
  readonly efficiencyFraction: number;
  readonly leachingFraction: number;
}

/** Water of one day, for one tree and, where the spacing is known, for a hectare. */
export interface NeedDay {
  /** Depth on the ground that counts: reference x coefficients. */
  readonly depthMm: number;
  /** What the tree takes. */
  readonly netLPerTree: number;
  /** What must leave the emitters for it. */
  readonly grossLPerTree: number;
  /** Over all ground, net and gross; 1 mm is 10 m3/ha. */
  readonly netMm?: number;
  readonly grossMm?: number;
  readonly netM3PerHa?: number;
  readonly grossM3PerHa?: number;
}

/** What trees want over one span. */
export interface NeedOfPeriod {
  readonly name: string;
  readonly days: number;
  readonly referenceMmPerDay: number;
  readonly coefficient: number;
  readonly meanDay: NeedDay;
  readonly hotDay: NeedDay;
  /** Of the whole span, after useful rain. */
  readonly netLPerTree: number;
  readonly grossLPerTree: number;
  readonly netM3PerHa?: number;
  readonly grossM3PerHa?: number;
  /** Useful rain beyond the need of the span, L per tree. */
  readonly rainBeyondNeedLPerTree: number;
}

/** What trees want, span by span. */
export interface WaterNeed {
  readonly area: NeedArea;
  readonly periods: readonly NeedOfPeriod[];
  /** Sum of the spans. */
  readonly netLPerTree: number;
  readonly grossLPerTree: number;
  readonly netM3PerHa?: number;
  readonly grossM3PerHa?: number;
}

/**
 * What a tree wants: net L/day = reference (x Kp) x coefficient x ground that counts; gross = net / (efficiency (1 - leaching)).
 * Source: FAO-56 (Allen et al. 1998) eq. 58 for the depth; 1 mm on 1 m2 is 1 L. The ground that counts is the rule's, see `NeedCover`.
 *
 * @throws RangeError where `needArea` does, or if a figure is negative, the efficiency not in (0, 1] or leaching not from 0 to below 1.
 * @example waterNeed({ tree: { spacing: { treeSpacingM: 6, rowSpacingM: 6 } }, cover: { rule: "whole-ground" }, reference: { kind: "et0" }, periods: [{ name: "January", days: 31, referenceMmPerDay: 7.5, coefficient: 0.7 }], hotDayRatio: 1.3, efficiencyFraction: 0.83, leachingFraction: 0 }).periods[0].meanDay.netLPerTree // 189
 */
export function waterNeed(question: NeedQuestion): WaterNeed {
  const area = needArea(question.tree, question.cover);
  const { groundM2 } = area;
  const periods = question.periods.map((period) => needOfPeriod(period, question, area));
  const net = sum(periods, (period) => period.netLPerTree);
  const gross = sum(periods, (period) => period.grossLPerTree);
  return {
    area,
    periods,
    netLPerTree: net,
    grossLPerTree: gross,
    ...(groundM2 === undefined ? {} : { netM3PerHa: m3PerHa(net, groundM2), grossM3PerHa: m3PerHa(gross, groundM2) }),
  };
}

function needOfPeriod(period: NeedPeriod, question: NeedQuestion, area: NeedArea): NeedOfPeriod {
  const { name, days, referenceMmPerDay, coefficient } = period;
  const hotMm = period.hotDayMmPerDay ?? referenceMmPerDay * question.hotDayRatio;
  const rainL = period.usefulRainLPerTree ?? 0;
  requireNotNegative({ days, referenceMmPerDay, coefficient, hotMm, rainL });
  const meanDay = needDay(referenceMmPerDay, coefficient, question, area);
  const wanted = days * meanDay.netLPerTree;
  const net = wanted > rainL ? wanted - rainL : 0;
  const gross = grossOf(net, question);
  const { groundM2 } = area;
  return {
    name,
    days,
    referenceMmPerDay,
    coefficient,
    meanDay,
    hotDay: needDay(hotMm, coefficient, question, area),
    netLPerTree: net,
    grossLPerTree: gross,
    ...(groundM2 === undefined ? {} : { netM3PerHa: m3PerHa(net, groundM2), grossM3PerHa: m3PerHa(gross, groundM2) }),
    rainBeyondNeedLPerTree: rainL > wanted ? rainL - wanted : 0,
  };
}

function needDay(referenceMm: number, coefficient: number, question: NeedQuestion, area: NeedArea): NeedDay {
  const { reference } = question;
  const depthMm = referenceMm * (reference.kind === "pan" ? reference.panCoefficient : 1) * coefficient;
  const net = depthMm * area.countsM2;
  const gross = grossOf(net, question);
  const { groundM2 } = area;
  if (groundM2 === undefined) return { depthMm, netLPerTree: net, grossLPerTree: gross };
  return {
    depthMm,
    netLPerTree: net,
    grossLPerTree: gross,
    netMm: net / groundM2,
    grossMm: gross / groundM2,
    netM3PerHa: m3PerHa(net, groundM2),
    grossM3PerHa: m3PerHa(gross, groundM2),
  };
}

function grossOf(netL: number, { efficiencyFraction, leachingFraction }: NeedQuestion): number {
  if (!(efficiencyFraction > 0 && efficiencyFraction <= 1)) {
    throw new RangeError(`waterNeed requires an efficiency in (0, 1]: got ${efficiencyFraction}`);
  }
  return withLeaching(netL / efficiencyFraction, leachingFraction);
}

/** Litres on one tree's ground as m3 on a hectare: 10000 m2 / 1000 L. */
const m3PerHa = (litres: number, groundM2: number): number => (10 * litres) / groundM2;

const sum = (periods: readonly NeedOfPeriod[], of: (period: NeedOfPeriod) => number): number =>
  periods.reduce((total, period) => total + of(period), 0);

function requireNotNegative(figures: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(figures)) {
    if (!(value >= 0)) throw new RangeError(`waterNeed requires ${name} from 0: got ${value}`);
  }
}
