/**
 * The one place where units change. Inside the model: cm, h, cm3 of water per tree, matric head in cm (negative when
 * unsaturated). Outside: the field's own units, named in every field. One kPa is taken as 10.2 cm of water
 * (1 / (9.81 m/s2 x 1000 kg/m3) rounded to three digits, the trade's usual figure).
 */
export const cmPerKPa = 10.2;
/** Centimetres in a metre. */
export const cmPerM = 100;
/** Cubic centimetres in a litre. */
export const cm3PerL = 1000;
/** Minutes in an hour. */
export const minutesPerH = 60;
/** Millimetres in a centimetre. */
export const mmPerCm = 10;
/** US gallon, inch and acre, exact by the international yard and pound agreement (1959). */
export const litresPerGallon = 3.785411784;
/** Centimetres in an inch. */
export const cmPerInch = 2.54;
/** Hectares in an acre. */
export const hectaresPerAcre = 0.40468564224;

/** Square metres in a hectare. */
export const m2PerHa = 10000;
/** Kilopascals in a centibar. */
export const kPaPerCbar = 1;
/**
 * Mg of salt in a litre of water per dS/m of its EC, for waters below about 5 dS/m (800 beyond). Source: US Salinity Laboratory
 * (1954), Agriculture Handbook 60; FAO-29 (1985). From memory.
 */
export const saltMgPerLPerDsPerM = 640;
/** Electrical conductivity of water: 1 dS/m is 1000 uS/cm and 100 mS/m. */
export const microSPerCmPerDsPerM = 1000;
/** Millisiemens per metre in a decisiemens per metre. */
export const mSPerMPerDsPerM = 100;

/** Tension in kPa (positive) to matric head in cm (negative). @example headFromTension(10) // -102 */
export const headFromTension = (tensionKPa: number): number => -tensionKPa * cmPerKPa;

/** Matric head in cm to tension in kPa; a positive head (free water) gives a negative tension. @example tensionFromHead(-102) // 10 */
export const tensionFromHead = (headCm: number): number => -headCm / cmPerKPa;
