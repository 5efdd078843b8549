/** The air over the crop, mean of a stage or of a day. */
export interface CropClimate {
  readonly windAt2mMPerS: number;
  readonly rhMinPct: number;
}

/** Between these the climate term was fitted. Source: FAO-56 (Allen et al. 1998) eq. 62. */
export const climateLimits: {
  readonly windAt2mMPerS: readonly [number, number];
  readonly rhMinPct: readonly [number, number];
  readonly heightM: readonly [number, number];
} = { windAt2mMPerS: [1, 6], rhMinPct: [20, 80], heightM: [0.1, 10] };

/**
 * What is added to a coefficient of the standard climate (2 m/s, RHmin 45 %): (0.04 (u2 - 2) - 0.004 (RHmin - 45)) (h/3)^0.3.
 * Source: FAO-56 eqs 62, 65, 70 and 72 share it.
 *
 * @throws RangeError outside wind 1 to 6 m/s, RHmin 20 to 80 % or height 0.1 to 10 m; see `climateWithinLimits`.
 * @example kcClimateTerm({ windAt2mMPerS: 4.6, rhMinPct: 44 }, 2) // 0.096
 */
export function kcClimateTerm(climate: CropClimate, heightM: number): number {
  check("windAt2mMPerS", climate.windAt2mMPerS, climateLimits.windAt2mMPerS);
  check("rhMinPct", climate.rhMinPct, climateLimits.rhMinPct);
  check("heightM", heightM, climateLimits.heightM);
  const air = 0.04 * (climate.windAt2mMPerS - 2) - 0.004 * (climate.rhMinPct - 45);
  return air * (heightM / 3) ** 0.3;
}

/**
 * A climate moved to the nearer end of the fitted range, with what was moved. For days of real weather, which leave the range
 * often; FAO-56 says to observe its limits, not how, so moving is our choice and is told.
 *
 * @example climateWithinLimits({ windAt2mMPerS: 0.6, rhMinPct: 50 }).moved // ["windAt2mMPerS"]
 */
export function climateWithinLimits(climate: CropClimate): {
  readonly climate: CropClimate;
  readonly moved: readonly (keyof CropClimate)[];
} {
  const within = (value: number, [low, high]: readonly [number, number]): number =>
    value < low ? low : value > high ? high : value;
  const limited = {
    windAt2mMPerS: within(climate.windAt2mMPerS, climateLimits.windAt2mMPerS),
    rhMinPct: within(climate.rhMinPct, climateLimits.rhMinPct),
  };
  const fields = ["windAt2mMPerS", "rhMinPct"] as const;
  return { climate: limited, moved: fields.filter((field) => limited[field] !== climate[field]) };
}

/**
 * Kc or Kcb of the middle of the season in another climate: table value + climate term. Source: FAO-56 eqs 62 and 70.
 *
 * @throws RangeError where `kcClimateTerm` does.
 * @example climateAdjustedKc(1.2, { windAt2mMPerS: 4.6, rhMinPct: 44 }, 2) // 1.30
 */
export const climateAdjustedKc = (tableKc: number, climate: CropClimate, heightM: number): number =>
  tableKc + kcClimateTerm(climate, heightM);

/**
 * Kc or Kcb of the end of the season in another climate: as for the middle, but a value below 0.45 stays, for crops that
 * dry on the field. Source: FAO-56 eqs 65 and 70.
 *
 * @throws RangeError where `kcClimateTerm` does.
 * @example climateAdjustedKcEnd(0.35, { windAt2mMPerS: 2.2, rhMinPct: 30 }, 0.4) // 0.35
 */
export const climateAdjustedKcEnd = (tableKc: number, climate: CropClimate, heightM: number): number =>
  tableKc < 0.45 ? tableKc : climateAdjustedKc(tableKc, climate, heightM);

/**
 * Upper limit of Kc just after wetting: the larger of 1.2 + climate term and Kcb + 0.05. Source: FAO-56 eq. 72.
 *
 * @throws RangeError where `kcClimateTerm` does.
 * @example kcMaximum({ windAt2mMPerS: 3, rhMinPct: 20 }, 1, 0.9) // 1.30
 */
export function kcMaximum(climate: CropClimate, heightM: number, kcb: number): number {
  const byEnergy = climateAdjustedKc(1.2, climate, heightM);
  return byEnergy > kcb + 0.05 ? byEnergy : kcb + 0.05;
}

function check(name: string, value: number, [low, high]: readonly [number, number]): void {
  if (value >= low && value <= high) return;
  throw new RangeError(`the climate term of Kc requires ${name} ${low} to ${high}: got ${value}`);
}
