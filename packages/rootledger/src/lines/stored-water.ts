/**
 * Water that the wetted and rooted ground lends between two irrigations, L per tree: readily available water x rooted depth
 * x wetted area.
 *
 * @throws RangeError if an argument is not above 0.
 * @example storedLitres({ readilyAvailableMmPerM: 70, rootedDepthM: 0.3, wettedM2: 9 }) // 189
 */
export function storedLitres(input: {
  readonly readilyAvailableMmPerM: number;
  readonly rootedDepthM: number;
  readonly wettedM2: number;
}): number {
  const { readilyAvailableMmPerM, rootedDepthM, wettedM2 } = input;
  if (!(readilyAvailableMmPerM > 0 && rootedDepthM > 0 && wettedM2 > 0)) {
    throw new RangeError(
      `storedLitres requires numbers above 0: got ${readilyAvailableMmPerM} mm/m, ${rootedDepthM} m, ${wettedM2} m2`,
    );
  }
  return readilyAvailableMmPerM * rootedDepthM * wettedM2;
}

/**
 * Irrigations a day that a store asks for: need over store, above 1 where the store does not last the day. Round it to a
 * number that people can follow.
 *
 * @throws RangeError if an argument is not above 0.
 * @example irrigationsPerDay({ needLPerTreePerDay: 62.5, storedL: 34 }) // 1.84
 */
export function irrigationsPerDay({
  needLPerTreePerDay,
  storedL,
}: {
  readonly needLPerTreePerDay: number;
  readonly storedL: number;
}): number {
  if (!(needLPerTreePerDay > 0 && storedL > 0)) {
    throw new RangeError(`irrigationsPerDay requires numbers above 0: got ${needLPerTreePerDay} and ${storedL} L`);
  }
  return needLPerTreePerDay / storedL;
}
