/**
 * Factor on a month's effective rain for the depth that the soil can hold between irrigations, near 1 (0.998) at 75 mm:
 * 0.531747 + 0.295164 D - 0.057697 D^2 + 0.003804 D^3, D in inches. Source: USDA-SCS (1993), NEH 623 ch. 2; FAO-24 (Doorenbos &
 * Pruitt 1977) table 34, from memory.
 *
 * @throws RangeError outside 20 to 175 mm, where the cubic leaves the table.
 * @example storageFactor(175) // 1.07
 */
export function storageFactor(netStorageMm: number): number {
  if (!(netStorageMm >= 20 && netStorageMm <= 175)) {
    throw new RangeError(`storageFactor requires a storage of 20 to 175 mm: got ${netStorageMm}`);
  }
  const inches = netStorageMm / 25.4;
  return 0.531747 + inches * (0.295164 + inches * (-0.057697 + inches * 0.003804));
}

/** What the useful rain of a month follows from. */
export interface RainMonth {
  readonly rainMm: number;
  readonly cropEtMm: number;
  /** Depth that the soil can hold between irrigations; left out, the table's own 75 mm, with a factor of 1. */
  readonly netStorageMm?: number;
}

/**
 * Effective rain of a month by the SCS method, mm: SF (1.25247 P^0.82416 - 2.93522) 10^(0.000955 ETc), not below 0 and not above
 * rain or crop ET; both limits are the source's. Source: USDA-SCS (1993), NEH 623 eq. 2-84; FAO-24 table 34, from memory. For rain
 * on whole fields with roots everywhere; under drip see `rainOnRoots`.
 *
 * @throws RangeError where `storageFactor` does.
 * @example scsEffectiveRainMm({ rainMm: 100, cropEtMm: 150, netStorageMm: 175 }) // 78.6
 */
export function scsEffectiveRainMm(month: RainMonth): number {
  const { rainMm, cropEtMm, netStorageMm } = month;
  const factor = netStorageMm === undefined ? 1 : storageFactor(netStorageMm);
  const byCurve = factor * (1.25247 * rainMm ** 0.82416 - 2.93522) * 10 ** (0.000955 * cropEtMm);
  return Math.max(0, Math.min(byCurve, rainMm, cropEtMm));
}

/**
 * Effective rain of a month by rule of thumb, mm: 0.6 P - 10 up to 75 mm, 0.8 P - 25 above, not below 0, for slopes up to 4 or 5 %.
 * Source: Brouwer & Heibloem (1986), FAO Irrigation Water Management Training Manual 3, ch. 4, from memory.
 *
 * @example thumbEffectiveRainMm(100) // 55
 */
export function thumbEffectiveRainMm(monthRainMm: number): number {
  const byRule = monthRainMm > 75 ? 0.8 * monthRainMm - 25 : 0.6 * monthRainMm - 10;
  return byRule > 0 ? byRule : 0;
}

/** Rain of a day that counts at all: above 5 mm, Western Australia agriculture department, citrus irrigation; about a quarter inch, UC Cooperative Extension (2016). */
export const rainThatCountsMm = 5;

/** What the useful rain of a day follows from. */
export interface RainDay {
  readonly rainMm: number;
  /** What canopy and litter held back. */
  readonly interceptedMm: number;
  /** Ground of one tree with roots under it, m2. */
  readonly rootedGroundM2: number;
  /** What the rooted soil can still hold, mm over the rooted ground. */
  readonly roomMm: number;
  readonly countsAboveMm: number;
}

/**
 * Where the rain of a day goes, L per tree, on rooted ground only: rain up to `countsAboveMm` counts as nothing; of the rest, less
 * what was held back, roots get what their soil has room for. Source: Western Australia agriculture department, citrus
 * irrigation recommendations: count events above 5 mm, and no more than the root zone can hold.
 *
 * @example rainOnRoots({ rainMm: 15, interceptedMm: 1, rootedGroundM2: 8, roomMm: 10, countsAboveMm: 5 }).usefulL // 80
 */
export function rainOnRoots(day: RainDay): {
  readonly usefulL: number;
  readonly beyondRoomL: number;
  readonly heldBackL: number;
} {
  const { rainMm, rootedGroundM2, roomMm } = day;
  if (rainMm <= day.countsAboveMm) return { usefulL: 0, beyondRoomL: 0, heldBackL: rainMm * rootedGroundM2 };
  const held = day.interceptedMm < rainMm ? day.interceptedMm : rainMm;
  const through = rainMm - held;
  const useful = through < roomMm ? through : roomMm;
  return {
    usefulL: useful * rootedGroundM2,
    beyondRoomL: (through - useful) * rootedGroundM2,
    heldBackL: held * rootedGroundM2,
  };
}
