import type { QuantityName } from "./quantity.js";
import { quantities } from "./quantity.js";
import { ask, type Stop } from "./stop.js";
import { type Unit, units } from "./unit.js";

/** Units that are offered for a column whose unit is not said. */
const offered: Partial<Readonly<Record<QuantityName | "air", readonly string[]>>> = {
  air: ["C", "F", "K", "0.1C"],
  rainMm: ["mm", "in", "0.1mm", "0.01in", "cm"],
  solarMJPerM2: ["W/m2", "MJ/m2", "kJ/m2", "J/cm2", "cal/cm2", "Wh/m2"],
  soilTensionKPa: ["kPa", "cbar", "hPa", "bar", "cm water", "pF"],
  windMPerS: ["m/s", "km/h", "knots", "mph", "km/d"],
  sunshineH: ["h", "min", "0.1h"],
};

/** Asks for the unit of a column; the choices say what its largest value would be. */
export function unitQuestion(
  quantity: QuantityName,
  header: string,
  why: string,
  largest: number,
  toRecord: (unit: Unit) => number,
  evidence: readonly string[],
): Stop {
  const { dimension } = quantities[quantity];
  const ids =
    offered[quantity] ??
    (dimension === "temperature"
      ? offered.air
      : dimension === "depth"
        ? offered.rainMm
        : dimension === "speed"
          ? offered.windMPerS
          : undefined);
  const choices = units.filter((unit) => unit.dimension === dimension && (ids === undefined || ids.includes(unit.id)));
  const kept = quantity.replace(/^.*?(MJPerM2|M3PerM3|MPerS|KPa|Pct|Deg|Mm|M3|C|H)$/, "$1");
  return ask(
    `unit:${header}`,
    `In which unit is "${header}"? ${why}`,
    choices.map((unit) => ({
      value: unit.id,
      meaning: `its largest value ${largest} is ${shown(unit.toKept(largest) * toRecord(unit))} ${unitWords[kept] ?? kept}`,
    })),
    evidence,
  );
}

const unitWords: Readonly<Record<string, string>> = {
  MJPerM2: "MJ/m2",
  M3PerM3: "m3/m3",
  MPerS: "m/s",
  KPa: "kPa",
  Pct: "%",
  Deg: "degrees",
  Mm: "mm",
  M3: "m3",
  C: "degrees Celsius",
  H: "h",
};

const shown = (value: number): string => String(Number(value.toPrecision(4)));
