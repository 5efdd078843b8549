/** What feeds and eats the litter under the trees. */
export interface LitterBudget {
  /** Dry leaves that fall under the canopy, kg/m2 and year. */
  readonly litterfallKgPerM2Year: number;
  /** Share that rots in a year, as a rate: mass falls by exp(-rate) in a year without new leaves. */
  readonly decayPerYear: number;
}

/**
 * Avocado: 5.6 t/ha/year under the trees (Murovhi et al. 2012, Agroforestry Systems 86:61, Nelspruit), 2.8 to 7.6 (Bernal-Estrada et al.
 * 2020, Antioquia); both seen. The decay rate is our choice, half in a year: composted pine bark took 5 years (Wolstenholme et al.
 * 1998, SAAGA Yearbook 21), leaves rot faster.
 */
export const avocadoLitter: LitterBudget = { litterfallKgPerM2Year: 0.56, decayPerYear: Math.LN2 };

/** Mass of dry litter after some years from a start, kg/m2: f/k + (m0 - f/k) exp(-k t), the balance of fall and decay. @example litterMassKgPerM2(avocadoLitter, 3) // 0.707 */
export function litterMassKgPerM2(budget: LitterBudget, years: number, startKgPerM2: number = 0): number {
  const { litterfallKgPerM2Year: fall, decayPerYear: decay } = budget;
  if (!(years >= 0) || !(decay > 0) || !(fall >= 0) || !(startKgPerM2 >= 0)) {
    throw new RangeError(
      `litterMassKgPerM2 requires years, fall and start from 0 and decay above 0: got ${years}, ${fall}, ${startKgPerM2} and ${decay}`,
    );
  }
  const steady = fall / decay;
  return steady + (startKgPerM2 - steady) * Math.exp(-decay * years);
}

/** What a litter layer does to the ground under it. Water from drip lines under the litter is not held back. */
export interface LitterLayer {
  readonly coverFraction: number;
  /** What is left of the evaporation of bare soil. */
  readonly evaporationFactor: number;
  /** Rain that it can hold, mm of the ground it lies on. */
  readonly storageMm: number;
}

/** Ground that a kilogram of litter covers when spread thinly, m2: 4.5, Gregory (1982), Trans. ASAE 25:75, wheat straw, from memory. */
const spreadM2PerKg = 4.5;
/** Water that broadleaf litter holds in the field, kg per kg dry: 3.4, Floriancic et al. (2022), forest-floor litter (seen). */
const waterPerMass = 3.4;

/**
 * A litter layer from its mass: cover 1 - exp(-4.5 m) (Gregory 1982); evaporation less 5 % for every 10 % covered (FAO-56, Allen et al.
 * 1998, ch. 10); store 3.4 mm per kg/m2 (Floriancic et al. 2022). So it works both ways: less evaporation, and light rain held back.
 *
 * @throws RangeError if the mass is negative.
 * @example litterLayer(0.4).storageMm // 1.36
 */
export function litterLayer(massKgPerM2: number): LitterLayer {
  if (!(massKgPerM2 >= 0)) throw new RangeError(`litterLayer requires a mass from 0 kg/m2: got ${massKgPerM2}`);
  const coverFraction = 1 - Math.exp(-spreadM2PerKg * massKgPerM2);
  return { coverFraction, evaporationFactor: 1 - 0.5 * coverFraction, storageMm: waterPerMass * massKgPerM2 };
}

/** Rain of one event that a dry layer holds, mm: all of it up to the store. @example heldByLayerMm(4, 1.36) // 1.36 */
export const heldByLayerMm = (rainMm: number, storageMm: number): number => (rainMm < storageMm ? rainMm : storageMm);

/** Store of loose organic mulch, mm: 1 per cm (field note, Standing & Pauker: 20 cm held about 20 mm). @example looseMulchStorageMm(20) // 20 */
export const looseMulchStorageMm = (thicknessCm: number): number => thicknessCm;

const tephra: readonly (readonly [thicknessCm: number, cut: number])[] = [
  [0, 0],
  [2, 0.52],
  [5, 0.83],
  [10, 0.92],
];

/**
 * What a layer of tephra or gravel takes off soil evaporation, as a fraction: 0.52, 0.83 and 0.92 at 2, 5 and 10 cm, linear between;
 * grain size hardly matters. Source: Diaz et al. (2005), 31 days at 9.1 to 11.5 mm/day.
 *
 * @throws RangeError outside 0 to 10 cm, the range measured.
 * @example gravelEvaporationCut(5) // 0.83
 */
export function gravelEvaporationCut(thicknessCm: number): number {
  if (!(thicknessCm >= 0 && thicknessCm <= 10)) {
    throw new RangeError(`gravelEvaporationCut requires a thickness of 0 to 10 cm: got ${thicknessCm}`);
  }
  const at = tephra.findIndex(([thickness]) => thickness >= thicknessCm);
  const [highCm, highCut] = tephra[at];
  if (at === 0) return highCut;
  const [lowCm, lowCut] = tephra[at - 1];
  return lowCut + ((highCut - lowCut) * (thicknessCm - lowCm)) / (highCm - lowCm);
}
