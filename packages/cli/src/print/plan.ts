import type { YearOfPlan, YearsPlan } from "rootledger/advise";
import type { PlugWarning } from "rootledger/lines";
import { words } from "../words.js";
import { planWords } from "../words-plan.js";
import type { Used } from "./assumptions.js";
import { textTable, wrapped } from "./text-table.js";

/** The whole answer of `plan` as text. */
export function planText(name: string, { years, lines }: YearsPlan, used: readonly Used[]): string {
  const nutrients = Object.keys(years[0]?.nutrientsG ?? {});
  const rows = years.map((year) => planRow(year, nutrients));
  const head = [...planWords.columns, ...nutrients.map((nutrient) => `${nutrient} g`)];
  const opening = lines.map(({ offsetM, opensAtYears }) =>
    wrapped(
      `${offsetM} m: ${opensAtYears === undefined ? planWords.never : `${opensAtYears.toFixed(1)} ${planWords.years}`}`,
      "    ",
      "  ",
    ),
  );
  const warned = years.flatMap(({ ageYears, plug }) =>
    plug.warnings.map((warning) => wrapped(`${planWords.age} ${ageYears}: ${warningText(warning)}`, "    ", "  ")),
  );
  return [
    wrapped(name),
    textTable(
      planWords.title,
      head.slice(1).map(() => ""),
      [head, ...rows],
    ),
    wrapped(planWords.legend),
    `\n${planWords.lines}\n`,
    ...opening,
    warned.length === 0 ? "" : `\n${planWords.lookAt}\n`,
    ...warned,
    `\n${wrapped(planWords.cautions)}`,
    `${words.defaults}${used.length === 0 ? `: ${words.noDefaults}` : ""}\n`,
    ...used.map(({ path, value, source }) => wrapped(`${path} ${value} (${source})`, "    ", "  ")),
  ].join("");
}

function planRow(year: YearOfPlan, nutrients: readonly string[]): string[] {
  const { ageYears, canopyDiameterM, rootRadiusM, peak, least, plug, linesInUseM, hoursOnHotDay, nutrientsG } = year;
  return [
    String(ageYears),
    canopyDiameterM.toFixed(1),
    rootRadiusM.toFixed(1),
    ...[least.meanDay, peak.meanDay, peak.hotDay].map(({ grossLPerTree }) => figure(grossLPerTree)),
    String(linesInUseM.length),
    `${plug.openPerTree}/${plug.emitters.length}`,
    `${Math.round(100 * plug.usefulShare)} %`,
    figure(hoursOnHotDay),
    ...nutrients.map((nutrient) => figure(nutrientsG[nutrient] ?? 0)),
  ];
}

const figure = (value: number): string => value.toFixed(value >= 99.95 ? 0 : value >= 9.995 ? 1 : 2);

function warningText(warning: PlugWarning): string {
  switch (warning.code) {
    case "circles-do-not-join":
      return `${planWords.apart} (${warning.gapM.toFixed(2)} > ${warning.wettedDiameterM.toFixed(2)} m)`;
    case "below-smallest-flow":
      return `${planWords.lowFlow} (${figure(warning.flowLPerH)} < ${figure(warning.smallestFlowLPerH)} L/h)`;
    case "pressure-rises":
      return `${planWords.pressure} (${warning.pluggedPerTree})`;
    case "wets-trunk":
      return `${planWords.trunk} (${warning.nearestM.toFixed(2)} m)`;
  }
}
