/** Rain that a closed canopy can hold, mm of the ground it covers. */
export interface CanopyStore {
  readonly storageMm: number;
  readonly source: string;
}

/**
 * Published stores. Cashew, leaf area index 1 to 1.25, 0.8 mm (interception study, Kottamparamba, India; seen). Citrus lost 5.8 to
 * 9.3 % of rain (Li et al. 1997, HortScience 32:1059), apple rows about 15 % (de Miranda & Butler 1986, J. Hydrology 87:245).
 * No store was found for avocado: 1 mm is our choice.
 */
export const canopyStores: Readonly<Record<"cashew" | "evergreen", CanopyStore>> = {
  cashew: { storageMm: 0.8, source: "interception of rain by cashew trees, Kottamparamba (seen)" },
  evergreen: { storageMm: 1, source: "our choice; no published value for avocado" },
};

/**
 * Rain of one event that a canopy holds back, mm over all ground: cover x S (1 - exp(-P/S)). Source: form of Merriam (1960), Trans. AGU
 * 41:660, from memory. One event a day; it dries before the next. Never more than falls on the canopy.
 *
 * @throws RangeError if rain is negative, the store not above 0 or the cover not 0 to 1.
 * @example canopyInterceptionMm({ rainMm: 4, coverFraction: 0.7, storageMm: 1 }) // 0.687
 */
export function canopyInterceptionMm(event: { rainMm: number; coverFraction: number; storageMm: number }): number {
  const { rainMm, coverFraction, storageMm } = event;
  if (!(rainMm >= 0) || !(storageMm > 0) || !(coverFraction >= 0 && coverFraction <= 1)) {
    throw new RangeError(
      `canopyInterceptionMm requires rain from 0, a store above 0 and cover 0 to 1: got ${rainMm}, ${storageMm} and ${coverFraction}`,
    );
  }
  return coverFraction * storageMm * (1 - Math.exp(-rainMm / storageMm));
}
