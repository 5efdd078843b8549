import type { Advice } from "rootledger/advise";
import { csvText } from "./csv-text.js";

/** Today's programme and the members of the set, one line for each measure. */
export function adviceCsv({ today, set }: Advice): string {
  const members = [today, ...set.filter(({ isToday }) => !isToday)];
  const head = [
    ...[
      "programme",
      "isToday",
      "everyDays",
      "startH",
      "pulses",
      "gapMinutes",
      "lines",
      "litresPerRun",
      "measure",
      "unit",
    ],
    ...["value", "low", "high", "difference", "differenceLow", "differenceHigh", "floor", "verdict", "cause"],
  ];
  const lines = members.flatMap(({ programme, isToday, choice, litresPerRun, measures, cause }) =>
    measures.map(({ id, unit, value, low, high, difference }) =>
      [
        ...[programme.name, isToday, choice.everyDays, choice.startH, choice.pulses, choice.gapMinutes, choice.lines],
        ...[litresPerRun, id, unit, value, low, high, difference.median, difference.low, difference.high],
        ...[difference.floor, difference.verdict, cause.code],
      ].map(String),
    ),
  );
  return csvText([head, ...lines]);
}
