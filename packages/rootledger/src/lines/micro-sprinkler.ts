/** A sprinkler under the canopy instead of driplines, on the same ground. */
export interface MicroSprinkler {
  readonly flowLPerH: number;
  /** Radius of the wetted disc, m; it is centred near the trunk. */
  readonly wettedRadiusM: number;
  /** Rain that the litter under the tree holds, mm. */
  readonly litterStorageMm: number;
}

/** A run of micro-sprinklers on the same ground. */
export interface MicroSprinklerRun {
  readonly wettedM2: number;
  readonly applicationMmPerH: number;
  /** Held by the litter at every run before the soil gets any, L. Under drip this is little, as the water falls in points. */
  readonly heldByLitterL: number;
  /** Water at the sprinkler for a net dose in the soil, L. */
  readonly grossL: number;
  readonly wetsTrunk: true;
}

/**
 * What a micro-sprinkler needs to bring a dose into the soil: the litter is wetted first, on the whole disc and at every
 * run, and the trunk with it. Drift and evaporation in flight are left out, so the need is the least.
 *
 * @throws RangeError if flow, radius or dose is not above 0 or the litter's store is below 0.
 * @example microSprinklerRun({ flowLPerH: 40, wettedRadiusM: 1.5, litterStorageMm: 2 }, 60).heldByLitterL // 14.1
 */
export function microSprinklerRun(sprinkler: MicroSprinkler, netL: number): MicroSprinklerRun {
  const { flowLPerH, wettedRadiusM, litterStorageMm } = sprinkler;
  if (!(flowLPerH > 0 && wettedRadiusM > 0 && litterStorageMm >= 0 && netL > 0)) {
    throw new RangeError(
      `microSprinklerRun requires flow, radius and dose above 0 and a store from 0: got ${flowLPerH}, ${wettedRadiusM}, ${netL}, ${litterStorageMm}`,
    );
  }
  const wettedM2 = Math.PI * wettedRadiusM * wettedRadiusM;
  const heldByLitterL = litterStorageMm * wettedM2;
  return {
    wettedM2,
    applicationMmPerH: flowLPerH / wettedM2,
    heldByLitterL,
    grossL: netL + heldByLitterL,
    wetsTrunk: true,
  };
}
