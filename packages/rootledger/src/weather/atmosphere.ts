/**
 * Mean atmospheric pressure, kPa: P = 101.3 ((293 - 0.0065 z) / 293)^5.26. Source: FAO-56 eq. 7. Valid -450 to 9000 m.
 *
 * @example atmosphericPressureKPa(1800) // 81.8
 */
export const atmosphericPressureKPa = (elevationM: number): number =>
  101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26;

/** Psychrometric constant, kPa/C: 0.665e-3 P. Source: FAO-56 eq. 8. @example psychrometricConstantKPaPerC(81.8) // 0.0544 */
export const psychrometricConstantKPaPerC = (pressureKPa: number): number => 0.665e-3 * pressureKPa;

/**
 * Water evaporated by an amount of energy, mm: 0.408 per MJ/m2, the latent heat being 2.45 MJ/kg. Source: FAO-56 eq. 20.
 *
 * @example evaporationEquivalentMm(12) // 4.9
 */
export const evaporationEquivalentMm = (energyMJPerM2: number): number => 0.408 * energyMJPerM2;
