/**
 * Wind speed at 2 m from that at another height over short grass: u 4.87 / ln(67.8 z - 5.42). Source: FAO-56 eq. 47.
 * Valid above 0.1 m; at 2 m the factor is 1.000.
 *
 * @example windAt2mMPerS(3.2, 10) // 2.4
 */
export const windAt2mMPerS = (windMPerS: number, heightM: number): number => windMPerS * windFactor(heightM);

/** Factor of FAO-56 eq. 47; exactly 1 at 2 m. @example windFactor(10) // 0.748 */
export const windFactor = (heightM: number): number => (heightM === 2 ? 1 : 4.87 / Math.log(67.8 * heightM - 5.42));

/** Wind speed in m/s from km/h. @example mPerSFromKmPerH(10) // 2.778 */
export const mPerSFromKmPerH = (kmPerH: number): number => kmPerH / 3.6;

/** Wind speed in m/s from knots of 1852 m. @example mPerSFromKnots(10) // 5.144 */
export const mPerSFromKnots = (knots: number): number => (knots * 1852) / 3600;
