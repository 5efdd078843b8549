import type { PracticeAccount } from "rootledger/scenario";
import type { NeedArea, NeedOfPeriod, NeedQuestion, PracticeRatio, WaterNeed } from "rootledger/tree";
import { needWords, words } from "../words.js";
import type { Used } from "./assumptions.js";
import { textTable, wrapped } from "./text-table.js";

/** The answer of `need`. */
export interface NeedAnswer {
  readonly name: string;
  readonly question: NeedQuestion;
  readonly need: WaterNeed;
  readonly practice: readonly PracticeRatio[];
  readonly accounts: readonly PracticeAccount[];
  readonly notes: readonly string[];
  readonly defaultsUsed: readonly Used[];
}

/** The whole answer of `need` as text. */
export function needText({ name, question, need, practice, accounts, notes, defaultsUsed }: NeedAnswer): string {
  const lines = defaultsUsed.map(({ path, value, source }) => wrapped(`${path} ${value} (${source})`, "    ", "  "));
  return [
    wrapped(name),
    wrapped(areaText(need.area, question.cover.rule)),
    wrapped(lossText(question)),
    `\n${perTree(need.periods)}`,
    need.area.groundM2 === undefined ? "" : `\n${perHectare(need)}`,
    practice.length === 0 ? "" : `\n${practiceText(practice)}`,
    accounts.length === 0 ? "" : `\n${accountText(accounts)}`,
    `\n${wrapped(needWords.cautions)}`,
    notes.length === 0 ? "" : `${words.notes}\n${notes.map((note) => wrapped(note, "    ", "  ")).join("")}`,
    `${words.defaults}${lines.length === 0 ? `: ${words.noDefaults}` : ""}\n`,
    ...lines,
  ].join("");
}

function areaText({ countsM2, groundM2, canopyM2, coverFraction }: NeedArea, rule: string): string {
  const parts = [
    `${needWords.counts} ${figure(countsM2)} m2 (${rule})`,
    groundM2 === undefined ? "" : `${needWords.spacing} ${figure(groundM2)} m2`,
    canopyM2 === undefined ? "" : `${needWords.canopy} ${figure(canopyM2)} m2`,
    coverFraction === undefined ? "" : `${percent(coverFraction)} ${needWords.covered}`,
  ];
  return `${parts.filter((part) => part !== "").join(", ")}.`;
}

function lossText({ efficiencyFraction, leachingFraction, reference }: NeedQuestion): string {
  const loss = `${needWords.net} ${percent(efficiencyFraction)}, ${needWords.leaching} ${percent(leachingFraction)}.`;
  const kp = reference.kind === "pan" ? ` ${reference.panCoefficient}` : "";
  return `${needWords.references[reference.kind]}${kp}. ${loss}`;
}

function perTree(periods: readonly NeedOfPeriod[]): string {
  const rows = periods.map(({ name, referenceMmPerDay, coefficient, meanDay, hotDay }) => [
    name,
    figure(referenceMmPerDay),
    coefficient.toFixed(2),
    ...[meanDay.netLPerTree, meanDay.grossLPerTree, hotDay.netLPerTree, hotDay.grossLPerTree].map(figure),
  ]);
  return textTable(needWords.perTree, ["", "", "", "", "", ""], [[...needWords.treeColumns], ...rows]);
}

function perHectare({ periods, netM3PerHa, grossM3PerHa }: WaterNeed): string {
  const rows = periods.map(({ name, days, meanDay, netM3PerHa: net, grossM3PerHa: gross }) => [
    name,
    dayCount(days),
    ...[meanDay.netMm, meanDay.netM3PerHa, meanDay.grossM3PerHa, net, gross].map(figure),
  ]);
  const days = periods.reduce((sum, period) => sum + period.days, 0);
  const total = [needWords.total, dayCount(days), "", "", "", figure(netM3PerHa), figure(grossM3PerHa)];
  const body = periods.length > 1 ? [...rows, total] : rows;
  return textTable(needWords.perHectare, ["", "", "", "", "", ""], [[...needWords.hectareColumns], ...body]);
}

function practiceText(practice: readonly PracticeRatio[]): string {
  const rows = practice.map(({ name, givenL, neededL, ratio, surplusL, split }) => [
    name,
    ...[givenL, neededL].map(figure),
    ratio.toFixed(1),
    figure(surplusL),
    ...(split === undefined ? ["", ""] : [split.withoutRootsL, split.beyondNeedL].map(figure)),
  ]);
  const table = textTable(needWords.practice, ["", "", "", "", "", ""], [[...needWords.practiceColumns], ...rows]);
  return `${table}${wrapped(needWords.practiceNote)}`;
}

function accountText(accounts: readonly PracticeAccount[]): string {
  const rows = accounts.map(({ name, givenL, wantedL, ratio, goes }) => {
    const { transpiredL, evaporatedL, belowRootsL, ranOffL, storedL } = goes;
    const parts = [transpiredL, evaporatedL, belowRootsL, ranOffL, storedL].map(figure);
    return [name, figure(givenL), figure(wantedL), ratio.toFixed(1), ...parts];
  });
  const blank = needWords.accountColumns.slice(2).map(() => "");
  const table = textTable(needWords.account, ["", ...blank], [[...needWords.accountColumns], ...rows]);
  return `${table}${wrapped(needWords.accountNote)}`;
}

/** Months of a long record have a fraction of a day. */
const dayCount = (days: number): string => String(Math.round(10 * days) / 10);

const percent = (fraction: number): string => `${Math.round(100 * fraction)} %`;

/** Three significant digits, or whole numbers above 100. @example figure(47.04) // "47.0" */
function figure(value: number | undefined): string {
  if (value === undefined) return "";
  const size = Math.abs(value);
  return value.toFixed(size >= 99.95 ? 0 : size >= 9.995 ? 1 : 2);
}
