const zeroCelsiusK = 273.15;
const secondsPerH = 3600;
const cm2PerM2 = 1e4;

/** Oxygen in dry air, mole fraction. */
export const oxygenInAirFraction = 0.2095;

/**
 * Diffusivity of oxygen in free air, cm2/h: 1.8e-5 m2/s at 0 C times (T/273.15)^1.75, which gives 2.1e-5 at 25 C. Source: the two
 * values from Hillel (1998), Environmental Soil Physics, from memory; the power from Fuller, Schettler & Giddings (1966).
 *
 * @throws RangeError outside -5 to 50 C.
 * @example oxygenInAirCm2PerH(25) // 755
 */
export function oxygenInAirCm2PerH(temperatureC: number): number {
  return 1.8e-5 * cm2PerM2 * secondsPerH * Math.exp(1.75 * Math.log(kelvin(temperatureC) / zeroCelsiusK));
}

/**
 * Oxygen in free air at one atmosphere, g/m3, by the ideal gas law: 32 g/mol x 0.2095 x 101325 Pa / (8.314 T).
 *
 * @throws RangeError outside -5 to 50 C.
 * @example oxygenInAirGPerM3(25) // 274.03
 */
export function oxygenInAirGPerM3(temperatureC: number): number {
  return (32 * oxygenInAirFraction * 101325) / (8.314 * kelvin(temperatureC));
}

/**
 * Oxygen dissolved in water over that in the air above it, both per volume: Henry's 1.3e-3 mol/(L atm) at 25 C with 1500 K
 * for temperature. Source: Sander (2015), Atmos. Chem. Phys. 15:4399, from memory.
 *
 * @throws RangeError outside -5 to 50 C.
 * @example oxygenSolubility(25) // 0.0318
 */
export function oxygenSolubility(temperatureC: number): number {
  const t = kelvin(temperatureC);
  return 1.3e-3 * Math.exp(1500 * (1 / t - 1 / 298.15)) * 0.082057 * t;
}

/** Diffusivity of oxygen in free water, cm2/h: 2.1e-9 m2/s at 25 C, about a ten-thousandth of that in air. Source: Hillel (1998), from memory. */
export const oxygenInWaterCm2PerH: number = 2.1e-9 * cm2PerM2 * secondsPerH;

/**
 * Respiration at another temperature over that at the reference, Q10^((T - reference)/10). Source: van 't Hoff's rule; Q10 is about 2
 * for roots and soil.
 *
 * @throws RangeError if q10 is not above 0.
 * @example q10Factor(2, 28, 20) // 1.7411
 */
export function q10Factor(q10: number, temperatureC: number, referenceC: number): number {
  if (!(q10 > 0)) throw new RangeError(`q10Factor requires q10 above 0: got ${q10}`);
  return Math.exp(((temperatureC - referenceC) / 10) * Math.log(q10));
}

function kelvin(temperatureC: number): number {
  if (!(temperatureC >= -5 && temperatureC <= 50)) {
    throw new RangeError(`oxygen in soil requires a temperature of -5 to 50 C: got ${temperatureC}`);
  }
  return temperatureC + zeroCelsiusK;
}
