import type { StationAnswers } from "./answers.js";
import type { ColumnPlan } from "./column-plan.js";
import type { HeaderBlock } from "./header-block.js";
import { isQuantity, type Role, type RoleKind } from "./header-role.js";
import { depthInHeader, unitInHeader } from "./header-unit.js";
import { canonicalName, roleOfHeader } from "./header-words.js";
import { headerZone } from "./header-zone.js";
import type { KnownLayout } from "./known-layouts.js";
import { normalText } from "./normal-text.js";
import type { Preamble } from "./preamble.js";
import { isQuantityName, type QuantityName, quantities } from "./quantity.js";
import type { ColumnReport } from "./station-report.js";
import { fault, type Stop } from "./stop.js";
import { type Unit, unitOf } from "./unit.js";

/** Plans every column by an answer, the layout, its header, the legend or the title of the sheet, in this order. */
export function planColumns(
  block: HeaderBlock,
  preamble: Preamble,
  layout: KnownLayout | undefined,
  answers: StationAnswers,
): readonly ColumnPlan[] | Stop {
  const headers = distinctHeaders(block.names);
  const plans: ColumnPlan[] = [];
  for (let index = 0; index < headers.length; index++) {
    const header = headers[index];
    const answered = answerFor("column", header, index, answers);
    const role = answered === undefined ? roleOf(block.names[index], preamble, layout) : answeredRole(answered);
    if (role === undefined) return fault("wrong-answer", `answer column:${header}`, answered ?? "", wantedRoles);
    const name = block.names[index];
    const zoneMinutes = role.kind === "date" || role.kind === "time" ? headerZone(name) : Number.NaN;
    if (!isQuantity(role)) {
      plans.push({ index, header, role, unit: undefined, unitFrom: "none", depthCm: undefined, zoneMinutes });
      continue;
    }
    const found = findUnit(role, name, index, header, { block, preamble, layout, answers });
    if ("stop" in found) return found;
    const asMm = role.quantity === "irrigationM3" && found.unit?.dimension === "depth";
    const kept: Role = asMm ? { ...role, quantity: "irrigationMm" } : role;
    const depthCm =
      quantities[role.quantity].soil && layout?.name !== "AmeriFlux half-hourly"
        ? depthInHeader(depthText(name, preamble))
        : undefined;
    plans.push({ index, header, role: kept, ...found, depthCm, zoneMinutes });
  }
  return unknown(answers, plans) ?? plans;
}

const depthText = (name: string, preamble: Preamble): string =>
  `${name} ${preamble.legend.get(name.trim().toLowerCase()) ?? ""}`.trim();

/** Columns of one name get a number behind it. */
function distinctHeaders(names: readonly string[]): string[] {
  const count = new Map<string, number>();
  for (const name of names) count.set(name.trim(), (count.get(name.trim()) ?? 0) + 1);
  const seen = new Map<string, number>();
  return names.map((text) => {
    const name = text.trim();
    if ((count.get(name) ?? 0) < 2 || name === "") return name;
    const number = (seen.get(name) ?? 0) + 1;
    seen.set(name, number);
    return `${name}(${number})`;
  });
}

/** The answer for a column by its header or by its place, counted from 1. */
function answerFor(
  kind: "unit" | "column",
  header: string,
  index: number,
  answers: StationAnswers,
): string | undefined {
  const wanted = [`${kind}:${header}`.toLowerCase(), `${kind}:${index + 1}`];
  const found = Object.entries(answers).find(([key]) => wanted.includes(key.toLowerCase()));
  return found?.[1];
}

const plainRoles: readonly Exclude<RoleKind, "quantity">[] = [
  "date",
  "time",
  "year",
  "month",
  "day",
  "day-of-year",
  "interval-start",
  "interval-end",
  "notes",
  "flag",
  "depth",
  "probe",
];
const wantedRoles = `must be ignore, ${plainRoles.join(", ")} or a quantity: ${Object.keys(quantities).join(", ")}`;

export function answeredRole(answer: string): Role | undefined {
  const text = answer.trim();
  if (text === "ignore" || text === "other") return { kind: "other" };
  const canonical = canonicalName.exec(text)?.[1] ?? text;
  if (isQuantityName(canonical)) return { kind: "quantity", quantity: canonical, canonical: false };
  const plain = plainRoles.find((one) => one === text);
  return plain === undefined ? undefined : { kind: plain };
}

function roleOf(name: string, preamble: Preamble, layout: KnownLayout | undefined): Role {
  const listed = layout?.columns[normalText(name)];
  if (listed !== undefined) {
    const quantity = listed.split(" ")[0];
    return isQuantityName(quantity) ? { kind: "quantity", quantity, canonical: false } : ({ kind: quantity } as Role);
  }
  if (layout?.onlyListed) return { kind: "other" };
  const own = roleOfHeader(name);
  if (own.kind !== "other") return own;
  const legend = preamble.legend.get(name.trim().toLowerCase());
  const explained = legend === undefined ? own : roleOfHeader(legend);
  if (isQuantity(explained)) return explained;
  const isDepth = /^\s*\d{1,3}\s*cm\b/i.test(name);
  return isDepth && preamble.sheet !== undefined
    ? { kind: "quantity", quantity: preamble.sheet.quantity, canonical: false }
    : own;
}

interface Sources {
  readonly block: HeaderBlock;
  readonly preamble: Preamble;
  readonly layout: KnownLayout | undefined;
  readonly answers: StationAnswers;
}

type UnitFound = { readonly unit: Unit | undefined; readonly unitFrom: ColumnReport["unitFrom"] };

function findUnit(
  role: { readonly quantity: QuantityName; readonly canonical: boolean },
  name: string,
  index: number,
  header: string,
  { block, preamble, layout, answers }: Sources,
): UnitFound | Stop {
  const { dimension } = quantities[role.quantity];
  const lookUp = (text: string | undefined): Unit | undefined => {
    if (text === undefined) return undefined;
    // Irrigation may be a depth as well as a volume; a moisture deficit or content is a depth only where it says so.
    return unitOf(text, dimension) ?? (dimension === "volume" ? unitOf(text, "depth") : undefined);
  };
  if (role.canonical) return { unit: lookUp(keptUnits[dimension]), unitFrom: "header" };
  const answer = answerFor("unit", header, index, answers);
  if (answer !== undefined) {
    const unit = lookUp(answer);
    if (unit === undefined)
      return fault("wrong-answer", `answer unit:${header}`, answer, `must be a unit of ${dimension}`);
    return { unit, unitFrom: "answer" };
  }
  const inHeader = unitInHeader(name, dimension) ?? (dimension === "volume" ? unitInHeader(name, "depth") : undefined);
  if (inHeader !== undefined) return { unit: inHeader, unitFrom: "header" };
  const below = lookUp(block.unitCells[index]);
  if (below !== undefined) return { unit: below, unitFrom: "unit row" };
  const listed = layout?.columns[normalText(name)]?.split(" ")[1];
  if (listed !== undefined) return { unit: lookUp(listed), unitFrom: "layout" };
  const legend = preamble.legend.get(name.trim().toLowerCase());
  const explained = legend === undefined ? undefined : unitInHeader(legend, dimension);
  if (explained !== undefined) return { unit: explained, unitFrom: "title" };
  if (preamble.sheet?.quantity === role.quantity && preamble.sheet.unit)
    return { unit: preamble.sheet.unit, unitFrom: "title" };
  return { unit: undefined, unitFrom: "none" };
}

/** The unit in which each dimension is kept. */
export const keptUnits = {
  temperature: "C",
  humidity: "percent",
  moisture: "fraction",
  speed: "m/s",
  angle: "deg",
  radiation: "MJ/m2",
  duration: "h",
  depth: "mm",
  pressure: "kPa",
  volume: "m3",
} as const;

/** An answer about a column that is not there is a mistake, not a wish. */
function unknown(answers: StationAnswers, plans: readonly ColumnPlan[]): Stop | undefined {
  for (const [key, value] of Object.entries(answers)) {
    const name = /^(?:unit|column):(.+)$/.exec(key)?.[1].trim().toLowerCase();
    if (name === undefined) continue;
    if (plans.some(({ header, index }) => header.toLowerCase() === name || String(index + 1) === name)) continue;
    const rule = `must name one of the columns ${plans
      .map(({ header }) => header)
      .join(", ")
      .slice(0, 300)}`;
    return fault("unknown-answer", `answer ${key}`, value, rule);
  }
  return undefined;
}
