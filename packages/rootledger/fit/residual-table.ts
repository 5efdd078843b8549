import type { SoilCurve } from "../src/ground/curve.js";
import { type FaoSoil, faoSoilRanges } from "../src/ground/fao-soil-ranges.js";
import { gardnerCurve } from "../src/ground/gardner-curve.js";
import { cmPerKPa } from "../src/units.js";
import { drainedTension } from "./conductivity.js";
import type { FittedClass } from "./default-set.js";
import { columnCm, drainedTensionKPa, drainHours, infiltration, iniaAvailable, rootMatCm } from "./facts.js";
import type { Target } from "./targets.js";

const curveOf = ({ textureClass, parameters }: FittedClass): SoilCurve => gardnerCurve(parameters, textureClass, "fit");

const at = (curve: SoilCurve, kPa: number): number => curve.thetaAt(-kPa * cmPerKPa);

/** A Markdown table with its columns lined up, the first to the left and the others to the right. */
function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = head.map((name, i) => Math.max(name.length, ...rows.map((row) => row[i].length)));
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join(" | ")} |`;
  const rule = widths.map((width, i) => (i === 0 ? "-".repeat(width) : `${"-".repeat(width - 1)}:`));
  return [head, rule, ...rows].map(line).join("\n");
}

/** Below this tension, with less air than this, the project calls a root airless. */
const airReturnKPa = 5;
const airLimit = 0.1;

function heldTable(classes: readonly FittedClass[]): string {
  const cell = (ours: number, target: Target): string => {
    const percent = Math.round(100 * (ours / target.mmPerM - 1));
    const mark = target.origin === "interpolated" ? "*" : "";
    return `${ours.toFixed(0)} / ${target.mmPerM.toFixed(0)}${mark} (${percent > 0 ? "+" : ""}${percent} %)`;
  };
  return table(
    ["class", "8-20 kPa", "8-40 kPa", "8-60 kPa", "8-1500 kPa", "theta 33 kPa", "theta 1500 kPa"],
    classes.map((fitted) => {
      const curve = curveOf(fitted);
      const { held, saxtonRawls } = fitted.targets;
      const ours = (kPa: number): number => 1000 * (at(curve, 8) - at(curve, kPa));
      return [
        fitted.textureClass,
        cell(ours(20), held.to20),
        cell(ours(40), held.to40),
        cell(ours(60), held.to60),
        cell(ours(1500), held.to1500),
        `${at(curve, 33).toFixed(3)} / ${saxtonRawls.theta33.toFixed(3)}`,
        `${at(curve, 1500).toFixed(3)} / ${saxtonRawls.theta1500.toFixed(3)}`,
      ];
    }),
  );
}

function waterTable(classes: readonly FittedClass[]): string {
  const tensions = [0, 1, 5, 8, 10, 20, 33, 60, 1500];
  return table(
    ["class", ...tensions.map((kPa) => `${kPa}`), "air 5", "air 8", "air 10"],
    classes.map((fitted) => {
      const curve = curveOf(fitted);
      return [
        fitted.textureClass,
        ...tensions.map((kPa) => at(curve, kPa).toFixed(3)),
        ...[5, 8, 10].map((kPa) => (curve.thetaSaturated - at(curve, kPa)).toFixed(3)),
      ];
    }),
  );
}

function flowTable(classes: readonly FittedClass[]): string {
  const tensions = [1, 5, 8, 20];
  return table(
    [
      "class",
      "kSat mm/h",
      "range mm/h",
      "Saxton-Rawls mm/h",
      ...tensions.map((kPa) => `K ${kPa} kPa cm/d`),
      `tension after ${drainHours} h, kPa (150 cm column)`,
      "airless then",
    ],
    classes.map((fitted) => {
      const curve = curveOf(fitted);
      const { lowMmPerH, highMmPerH, origin } = infiltration[fitted.textureClass];
      const drained = drainedTension(curve);
      const air = curve.thetaSaturated - at(curve, drained);
      const range = Number.isFinite(highMmPerH) ? `${lowMmPerH}-${highMmPerH}` : `> ${lowMmPerH}`;
      return [
        fitted.textureClass,
        (10 * curve.kSatCmPerH).toFixed(1),
        `${range}${origin === "neighbours" ? "*" : ""}`,
        (10 * fitted.targets.saxtonRawls.kSatCmPerH).toFixed(1),
        ...tensions.map((kPa) => (24 * curve.conductivityAt(-kPa * cmPerKPa)).toPrecision(3)),
        `${drained.toFixed(2)} (${drainedTension(curve, 150).toFixed(2)})`,
        air < airLimit && drained < airReturnKPa ? "yes" : "no",
      ];
    }),
  );
}

/** Against tables the fit did not use. */
function availableTable(classes: readonly FittedClass[]): string {
  return table(
    ["class", "ours", "FAO-56 table 19", "INIA Coquimbo (2000)"],
    classes.map((fitted) => {
      const curve = curveOf(fitted);
      const name = fitted.textureClass;
      const fao = name in faoSoilRanges ? faoSoilRanges[name as FaoSoil].available : undefined;
      const inia = iniaAvailable[name];
      return [
        name,
        (1000 * (at(curve, drainedTensionKPa) - at(curve, 1500))).toFixed(0),
        fao === undefined ? "" : `${Math.round(1000 * fao.low)}-${Math.round(1000 * fao.high)}`,
        inia === undefined ? "" : `${inia}`,
      ];
    }),
  );
}

/** The text of fit/RESIDUALS.md. */
export function residualTable(classes: readonly FittedClass[]): string {
  return `# What the default class curves miss

Written by \`fit/main.ts\`; sources are beside the facts in \`fit/facts.ts\`. Every entry "ours / target".

## Water held, mm per m of soil

A star marks a target that no source prints and that was interpolated over texture (rule in \`fit/targets.ts\`).
Accepted: 8-20, 8-60 and 8-1500 kPa within 35 %.

${heldTable(classes)}

## Water content at a tension in kPa, and air-filled porosity

${waterTable(classes)}

## Flow

A star marks a range given to the class from its neighbours. The drain: covered column of ${columnCm} cm from saturation, unit
gradient below, ${drainHours} h; mean tension of the upper ${rootMatCm} cm. Accepted: 5-15 kPa, and kSat inside its range.
"Airless" is air-filled porosity below ${airLimit} and tension below ${airReturnKPa} kPa.

${flowTable(classes)}

## Available water against tables the fit did not use, mm per m

Ours from the tension after the drain to 1500 kPa. Saxton & Rawls' water at 1500 kPa is low for silt and high for clay
beside these tables, and ours follows it.

${availableTable(classes)}
`;
}
