import { cmPerKPa } from "../../units.js";
import { mJPerM2PerCalPerCm2 } from "../radiation-units.js";
import type { Dimension } from "./quantity.js";

export interface Unit {
  readonly id: string;
  readonly dimension: Dimension;
  /** The kept unit from this one; for a power, per second of the record. */
  readonly toKept: (value: number) => number;
  /** A rate: times the seconds of the record it is the amount. */
  readonly perSecond: boolean;
  /** How files write it, lower case, without blanks, accents and superscripts. */
  readonly words: readonly string[];
}

const unit = (id: string, dimension: Dimension, toKept: Unit["toKept"], words: string, perSecond = false): Unit => ({
  id,
  dimension,
  toKept,
  perSecond,
  words: words.split(" "),
});

const same = (value: number): number => value;
const times =
  (factor: number): Unit["toKept"] =>
  (value) =>
    value * factor;
const over =
  (divisor: number): Unit["toKept"] =>
  (value) =>
    value / divisor;

/**
 * Units that files are written in. Factors: NIST SP 811 (2008), appendix B.8 (inch 25.4 mm, mile per hour 0.44704 m/s, knot
 * 1852 m per hour, langley 41 840 J/m2, mm of mercury 0.133322 kPa, inch of mercury 3.386389 kPa, pound per square inch 6.894757 kPa);
 * calorie per cm2 and W/m2: FAO-56 (Allen et al. 1998) table 3. pF is the decimal logarithm of the suction in cm of water
 * (Schofield 1935).
 */
export const units: readonly Unit[] = [
  unit("C", "temperature", same, "c degc celsius gradc centigrade degreesc degreescelsius gradoscentigrados cent"),
  unit("F", "temperature", (value) => (value - 32) / 1.8, "f degf fahrenheit degreesf degreesfahrenheit"),
  unit("K", "temperature", (value) => value - 273.15, "k kelvin degk"),
  unit("0.1C", "temperature", over(10), "0.1c 1/10c tenthsofc tenthsofdegc tenthsdegc 0.1degc"),
  unit("percent", "humidity", same, "% pct percent prozent %rh rh% percentrh"),
  unit("fraction", "humidity", times(100), "fraction 0-1 -"),
  unit("percent", "moisture", over(100), "% pct percent prozent vol% vol.-% vol.% volpct %vol %vwc %v/v"),
  unit("fraction", "moisture", same, "m3/m3 m3m-3 cm3/cm3 cm3cm-3 fraction v/v 0-1 m3m3 m3perm3"),
  unit("m/s", "speed", same, "m/s ms-1 ms m/sec mps meters/second metres/second meterspersecond"),
  unit("km/h", "speed", over(3.6), "km/h kmh kmh-1 kph kilometers/hour"),
  unit("mph", "speed", times(0.44704), "mph mi/h mileshour miles/hour"),
  unit("knots", "speed", (value) => (value * 1852) / 3600, "kn kt kts knot knots knoten nudos"),
  unit("ft/s", "speed", times(0.3048), "ft/s fps"),
  unit("km/d", "speed", over(86.4), "km/d km/day km/dia"),
  unit("deg", "angle", same, "deg degree degrees gr grad grados azimuth degtrue"),
  unit("10deg", "angle", times(10), "10deg tensofdegrees tensdeg"),
  unit("MJ/m2", "radiation", same, "mj/m2 mjm-2 mj/m2/d mj/m2/day mjm-2d-1 mj/m2d mjperm2 mjm2"),
  unit("kJ/m2", "radiation", over(1000), "kj/m2 kjm-2 kj/m2/h kjm2"),
  unit("J/m2", "radiation", over(1e6), "j/m2 jm-2"),
  unit("J/cm2", "radiation", over(100), "j/cm2 jcm-2 j/cmsq j/cmsq."),
  unit("cal/cm2", "radiation", times(mJPerM2PerCalPerCm2), "cal/cm2 calcm-2 cal/cm2/d"),
  unit("langley", "radiation", times(0.04184), "langley langleys ly ly/d ly/day"),
  unit("Wh/m2", "radiation", times(0.0036), "wh/m2 whm-2"),
  unit("kWh/m2", "radiation", times(3.6), "kwh/m2 kwhm-2"),
  unit("W/m2", "radiation", over(1e6), "w/m2 wm-2 w/mq watt/m2 watts/m2 w/sqm wm2 wpm2", true),
  unit("h", "duration", same, "h hr hrs hour hours stunden std horas"),
  unit("min", "duration", over(60), "min minutes minuten minutos"),
  unit("0.1h", "duration", over(10), "0.1h 1/10h tenthsofhours"),
  unit("mm", "depth", same, "mm l/m2 lm-2 l/mq kg/m2 mm/d mm/day mm/dia mm/h litros/m2 millimeters millimetres"),
  unit("cm", "depth", times(10), "cm"),
  unit("0.1mm", "depth", over(10), "0.1mm 1/10mm tenthsofmm mm/10"),
  unit("in", "depth", times(25.4), "in inch inches pulgadas zoll"),
  unit("0.01in", "depth", times(0.254), "0.01in 1/100in hundredthsofaninch hundredthsofin"),
  unit("kPa", "pressure", same, "kpa"),
  unit("cbar", "pressure", same, "cbar cb centibar centibars cbars"),
  unit("hPa", "pressure", over(10), "hpa mbar mb millibar millibars"),
  unit("bar", "pressure", times(100), "bar bars"),
  unit("MPa", "pressure", times(1000), "mpa"),
  unit("Pa", "pressure", over(1000), "pa"),
  unit("cm water", "pressure", over(cmPerKPa), "cmh2o cmwater cmws cmwater cm"),
  unit("pF", "pressure", (value) => 10 ** value / cmPerKPa, "pf"),
  unit("mmHg", "pressure", times(0.133322), "mmhg torr"),
  unit("inHg", "pressure", times(3.386389), "inhg"),
  unit("psi", "pressure", times(6.894757), "psi"),
  unit("m3", "volume", same, "m3 cubicmeters cubicmetres"),
  unit("L", "volume", over(1000), "l liter liters litre litres litros"),
];

const byWord: ReadonlyMap<string, readonly Unit[]> = new Map(
  [...new Set(units.flatMap(({ words }) => words))].map((word) => [
    word,
    units.filter(({ words }) => words.includes(word)),
  ]),
);

/** The units written so; more than one where a word serves several dimensions, none where it is no unit. */
export const unitsWritten = (text: string): readonly Unit[] => byWord.get(unitWord(text)) ?? [];

/** The unit of that dimension written so, or with that id. */
export const unitOf = (text: string, dimension: Dimension): Unit | undefined =>
  unitsWritten(text).find((one) => one.dimension === dimension) ??
  units.find((one) => one.dimension === dimension && one.id.toLowerCase() === text.trim().toLowerCase());

const unitWord = (text: string): string =>
  text
    .slice(0, 40)
    .replace(/[\u00b0\u00ba\s^*()[\]\u00b7]/g, "")
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/\u2212/g, "-");
