import type { Advice } from "rootledger/advise";
import type { Column } from "./column.js";
import { numberColumn, type Table, tableOf, textColumn } from "./table.js";

/** Today's programme and the members of the set, one line for each measure. */
export function adviceTable({ today, set }: Advice): Table {
  const rows = [today, ...set.filter(({ isToday }) => !isToday)].flatMap((member) =>
    member.measures.map((one) => ({ member, one })),
  );
  type Row = (typeof rows)[number];
  const inUnit = (name: string, description: string, of: Column<Row>["of"]): Column<Row> => ({
    ...{ name, type: "number", description: `${description}, in the line's unit`, of },
  });
  const columns: Column<Row>[] = [
    textColumn("programme", "name of the programme", ({ member }) => member.programme.name),
    textColumn("isToday", "true for today's programme, else false", ({ member }) => String(member.isToday)),
    numberColumn("everyDays", "d", "days from one watering to the next", ({ member }) => member.choice.everyDays),
    numberColumn("startH", "h", "clock hour at which it starts", ({ member }) => member.choice.startH),
    numberColumn("pulses", "count", "openings of the valve in one watering", ({ member }) => member.choice.pulses),
    numberColumn("gapMinutes", "min", "pause between pulses", ({ member }) => member.choice.gapMinutes),
    textColumn("lines", "lines in use", ({ member }) => String(member.choice.lines)),
    numberColumn("litresPerRun", "L/tree", "water of one watering", ({ member }) => member.litresPerRun),
    textColumn("measure", "name of the measure", ({ one }) => one.id),
    textColumn("unit", "unit of the line's numbers", ({ one }) => one.unit),
    inUnit("value", "the measure of the scenario itself", ({ one }) => one.value),
    inUnit("low", "lowest of the draws", ({ one }) => one.low),
    inUnit("high", "highest of the draws", ({ one }) => one.high),
    inUnit("difference", "middle of the differences from today's", ({ one }) => one.difference.median),
    inUnit("differenceLow", "low end of the differences", ({ one }) => one.difference.low),
    inUnit("differenceHigh", "high end of the differences", ({ one }) => one.difference.high),
    inUnit("floor", "size below which nothing is claimed", ({ one }) => one.difference.floor),
    textColumn("verdict", "rises, falls or no clear difference", ({ one }) => one.difference.verdict),
    textColumn("cause", "why the programme is in the set", ({ member }) => member.cause.code),
  ];
  return tableOf("advice", "Today's programme and those that are better in something", columns, rows);
}
