import { cellKind } from "./cell-kind.js";
import type { ColumnPlan } from "./column-plan.js";
import type { HeaderBlock } from "./header-block.js";
import { isQuantity, type RoleKind } from "./header-role.js";
import type { Preamble } from "./preamble.js";
import type { StampPlaces } from "./read-stamps.js";
import { newStampParts, scanStamp } from "./scan-stamp.js";

type Sample = readonly (readonly string[])[];

/**
 * Which columns hold the date and the time, by their names and by what a sample of their cells looks like. A time column counts only
 * beside the date: tables of extremes have one behind every value. Undefined where no date is found.
 */
export function findStampPlaces(
  plans: readonly ColumnPlan[],
  block: HeaderBlock,
  sample: Sample,
  preamble: Preamble,
  answeredYear: string | undefined,
): StampPlaces | undefined {
  const of = (kind: RoleKind): number => plans.find(({ role }) => role.kind === kind)?.index ?? -1;
  const dates = plans.filter(
    ({ role }) =>
      role.kind === "interval-start" || role.kind === "interval-end" || role.kind === "date" || role.kind === "time",
  );
  const date = dates.find(({ index }) => share(sample, index, isFullDate) >= 0.5) ?? contentDate(plans, sample);
  const titleYear = answeredYear === undefined ? preamble.year : Number(answeredYear);
  const none = {
    date: -1,
    time: -1,
    year: -1,
    month: -1,
    day: -1,
    dayOfYear: -1,
    titleYear,
    titleMonth: preamble.month,
    hint: "",
  };
  if (date !== undefined) {
    const hint = `${block.names[date.index] ?? ""} ${block.unitCells[date.index] ?? ""}`;
    return { ...none, date: date.index, time: timeBeside(date.index, plans, sample), hint };
  }
  const [year, month, dayNamed, named] = [of("year"), of("month"), of("day"), of("day-of-year")];
  const dayOfYear = named >= 0 ? named : year >= 0 && month < 0 ? dayNamed : -1;
  const day = dayOfYear >= 0 ? -1 : dayNamed;
  const yearKnown = year >= 0 || !Number.isNaN(titleYear);
  const monthKnown = month >= 0 || !Number.isNaN(preamble.month);
  if (!yearKnown || (dayOfYear < 0 && (day < 0 || !monthKnown))) return undefined;
  const last = Math.max(year, month, day, dayOfYear);
  return { ...none, year, month, day, dayOfYear, time: timeBeside(last, plans, sample) };
}

/** Without a name that says so, the first column of full dates is the date. */
function contentDate(plans: readonly ColumnPlan[], sample: Sample): ColumnPlan | undefined {
  return plans.find(({ index, role }) => role.kind === "other" && share(sample, index, isWrittenDate) >= 0.8);
}

function timeBeside(at: number, plans: readonly ColumnPlan[], sample: Sample): number {
  const beside = [plans[at + 1], plans[at - 1]].find((plan) => plan !== undefined && plan.role.kind === "time");
  const unnamed =
    plans[at + 1]?.role.kind === "other" && share(sample, at + 1, isClock) >= 0.8 ? plans[at + 1] : undefined;
  const found = beside ?? unnamed;
  if (found === undefined || isQuantity(found.role)) return -1;
  return share(sample, found.index, isTimeOfDay) >= 0.5 ? found.index : -1;
}

function share(sample: Sample, index: number, test: (text: string) => boolean): number {
  let filled = 0;
  let fits = 0;
  for (const row of sample) {
    const text = row[index]?.trim() ?? "";
    if (text === "") continue;
    filled++;
    if (test(text)) fits++;
  }
  return filled === 0 ? 0 : fits / filled;
}

/** A date with its year, or one number that can be one: run together, a day count or seconds. */
function isFullDate(text: string): boolean {
  const parts = newStampParts();
  if (!scanStamp(text, parts)) return false;
  if (isWrittenDate(text)) return true;
  const digits = parts.digits[0];
  return (
    parts.count <= 2 &&
    parts.hourAt < 0 &&
    !/^[+-]/.test(text) &&
    (digits === 5 || digits === 7 || digits === 8 || digits === 10 || digits >= 12)
  );
}

function isWrittenDate(text: string): boolean {
  const parts = newStampParts();
  if (cellKind(text) === "number" || !scanStamp(text, parts)) return false;
  return (
    (parts.count >= 3 && (parts.hourAt < 0 || parts.hourAt >= 3)) ||
    (parts.digits[0] === 8 && parts.count >= 2) ||
    (parts.digits[0] === 4 && parts.digits[1] === 3)
  );
}

const isClock = (text: string): boolean => /^\d{1,2}:\d{2}/.test(text);

function isTimeOfDay(text: string): boolean {
  const parts = newStampParts();
  return (
    scanStamp(text, parts) && parts.monthAt < 0 && parts.count <= 4 && parts.digits[0] <= 4 && !text.startsWith("-")
  );
}
