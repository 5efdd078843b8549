/** What acts on the ground during one step, constant. Rates of 0 or more; what is left out is 0. */
export interface StepForcing {
  /** Water leaving the tree's open emitters, L/h. */
  readonly emitterLPerH?: number;
  /** Rain that reaches the ground, mm/h, alike on all of it. */
  readonly rainMmPerH?: number;
  /** Most that the tree would transpire, mm/h over its whole ground. */
  readonly transpirationMmPerH?: number;
  /** Most that the bare soil could lose, mm/h of every lane; soil under a canopy loses less, which is the caller's to say. */
  readonly evaporationMmPerH?: number;
}

const known: readonly (keyof StepForcing)[] = [
  "emitterLPerH",
  "rainMmPerH",
  "transpirationMmPerH",
  "evaporationMmPerH",
];

/** @throws RangeError naming a rate that is negative or not finite, or that is none of the four. @example requireForcing({ rainMmPerH: 2 }) */
export function requireForcing(forcing: StepForcing): void {
  for (const [name, value] of Object.entries(forcing)) {
    if (!known.some((rate) => rate === name)) {
      throw new RangeError(`step requires rates named ${known.join(", ")}: got ${name}`);
    }
    if (!(value >= 0 && Number.isFinite(value))) {
      throw new RangeError(`step requires a finite ${name} of 0 or more: got ${value}`);
    }
  }
}
