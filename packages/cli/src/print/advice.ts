import type { Advice, AdviceCheck, AdviceDifference, AdviceMember } from "rootledger/advise";
import { adviceEnglish, adviceSpanish, causeText, clockText } from "rootledger/words";
import { adviseWords as words } from "../words-advise.js";
import { textTable, wrapped } from "./text-table.js";

const signs = { rises: "+", falls: "-" } as const;
const places = { en: "en-GB", es: "es-ES" } as const;

/** The whole answer of `advise` as text. */
export function adviceText(advice: Advice, check: AdviceCheck | undefined, language: "en" | "es"): string {
  const texts = language === "es" ? adviceSpanish : adviceEnglish;
  const number = (value: number, digits: number): string =>
    new Intl.NumberFormat(places[language], { maximumSignificantDigits: digits }).format(value);
  const others = advice.set.filter(({ isToday }) => !isToday);
  const names = new Map(others.map((member, i) => [member, String(i + 1)]));
  const todayName = advice.set.some(({ isToday }) => isToday) ? words.today : words.todayNotInSet;
  const rows = [
    memberRow(advice.today, todayName),
    ...others.map((member) => memberRow(member, names.get(member) ?? "")),
  ];
  const head = ["", ...words.columns, ...Object.values(words.measures)];
  const why = others.map((member) =>
    wrapped(`${names.get(member)}: ${causeText(member.cause, texts, { number, units: { water: "L" } })}`, "    ", "  "),
  );
  return [
    wrapped(advice.name),
    wrapped(horizonText(advice)),
    wrapped(texts.answer[advice.answer]),
    `\n${textTable(
      words.title,
      head.slice(1).map(() => ""),
      [head, ...rows],
    )}`,
    wrapped(words.legend),
    ...(why.length === 0 ? [] : [`\n${words.why}\n`, ...why]),
    ...treeTable(advice, names),
    `\n${wrapped(words.verdictRule)}`,
    wrapped(floorsText(advice), "    ", "  "),
    wrapped(triedText(advice)),
    wrapped(words.status[advice.status]),
    ...(check === undefined ? [wrapped(words.checkHint)] : checkText(check, others, names)),
    "\n",
    ...advice.cautions.map((caution) => wrapped(texts.caution[caution])),
  ].join("");
}

function memberRow(
  { choice, minutesPerPulse, lastStopH, measures, isToday, programme }: AdviceMember,
  name: string,
): string[] {
  const { everyDays, startH, pulses, gapMinutes } = choice;
  const several = isToday && programme.runs.length > 1;
  const clock = several
    ? [words.asItIs, "", "", "", "", ""]
    : [
        ...[String(everyDays), clockText(startH), String(pulses), figure(minutesPerPulse)],
        ...[pulses === 1 ? "" : figure(gapMinutes), clockText(lastStopH)],
      ];
  return [
    name,
    ...clock,
    ...measures.map(({ value, difference }) => `${figure(value)}${isToday ? "" : ` ${signOf(difference)}`}`),
  ];
}

const signOf = ({ verdict, mean, floor }: AdviceDifference): string =>
  verdict === "no clear difference" ? (Math.abs(mean) > floor ? "?" : "=") : signs[verdict];

const figure = (value: number): string => value.toFixed(Math.abs(value) >= 99.95 || Number.isInteger(value) ? 0 : 1);

function horizonText({ horizon, draws, water, today }: Advice): string {
  const { days, fromDate, leadDays } = horizon;
  const failed = draws.failed > 0 ? `; ${draws.failed} ${words.drawsFailed}` : "";
  const litres = `${water === "same" ? words.water.same : words.water.change} ${figure(today.litresPerDay)} ${words.water.perDay}`;
  return `${litres}. ${days} ${words.horizon} ${fromDate}; ${leadDays} ${words.lead}. ${words.draws} ${draws.counted}${failed}.`;
}

function triedText({ candidates }: Advice): string {
  const cut = candidates.cut.map(({ reason, candidates: count }) => `${words.cutReasons[reason]} ${count}`).join(", ");
  return `${candidates.tried} ${words.tried}${cut === "" ? "" : `; ${words.cut}: ${cut}`}.`;
}

function floorsText({ set, today }: Advice): string {
  const sizes = new Map<string, Set<string>>();
  for (const { measures } of set.length > 0 ? set : [today]) {
    for (const { id, unit, difference } of measures) {
      const name = `${words.measures[id]} (${unit})`;
      sizes.set(name, (sizes.get(name) ?? new Set()).add(figure(difference.floor)));
    }
  }
  return [...sizes].map(([name, found]) => `${name} ${[...found].sort().join(" / ")}`).join("; ");
}

function treeTable({ set, today, tree }: Advice, names: ReadonlyMap<AdviceMember, string>): string[] {
  const trees = today.trees.filter((one) => one.tree !== tree);
  if (trees.length === 0) return [];
  const head = ["", ...Object.values(words.measures)];
  const rows = [today, ...set.filter(({ isToday }) => !isToday)].flatMap((member) =>
    member.trees
      .filter((one) => one.tree !== tree)
      .map((one) => [
        `${names.get(member) ?? words.today}: ${one.tree}`,
        ...(["thirsty", "airless", "below-roots", "pump-starts"] as const).map((id) => figure(one[id])),
      ]),
  );
  return [
    `\n${wrapped(words.others)}`,
    textTable(
      "",
      head.slice(1).map(() => ""),
      [head, ...rows],
    ),
  ];
}

function checkText(
  check: AdviceCheck,
  others: readonly AdviceMember[],
  names: ReadonlyMap<AdviceMember, string>,
): string[] {
  const rows = check.differences.map(({ programme, measureId, fast, slow, floor, verdict }) => {
    const member = others.find((one) => one.programme.name === programme);
    const name = `${member === undefined ? programme : names.get(member)}: ${words.measures[measureId]}`;
    return [name, figure(fast), figure(slow), figure(floor), words.checkVerdicts[verdict]];
  });
  const head = ["", ...words.checkColumns];
  return [
    `\n${wrapped(`${words.checked} ${check.days}`)}`,
    textTable(
      "",
      head.slice(1).map(() => ""),
      [head, ...rows],
    ),
    wrapped(check.rankingHolds ? words.rankingHolds : words.rankingFails),
  ];
}
