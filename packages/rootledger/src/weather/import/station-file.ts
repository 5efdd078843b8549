import { dateOf, dayNumberOf } from "../../numeric/day-number.js";
import type { StationAnswers } from "./answers.js";
import { type Body, bodyRows } from "./body-rows.js";
import type { ColumnPlan } from "./column-plan.js";
import { findStampPlaces } from "./find-stamp-places.js";
import { findHeader, type HeaderBlock, spreadRows } from "./header-block.js";
import { isQuantity } from "./header-role.js";
import { joinedNotes } from "./joined-notes.js";
import { type KnownLayout, layoutOf } from "./known-layouts.js";
import { numberStyle } from "./number-style.js";
import { answeredRole, planColumns } from "./plan-columns.js";
import { type Preamble, readPreamble } from "./preamble.js";
import type { Grid } from "./read-grid.js";
import type { NumberStyle } from "./read-number.js";
import { readStamps, type StampPlaces, type StampsRead } from "./read-stamps.js";
import { mostRejectedKept, type RejectedRows, rejectedRow } from "./rejected-rows.js";
import { cellsOf } from "./row-cursor.js";
import type { RejectedRow } from "./station-report.js";
import { ask, fault, isStop, type Stop } from "./stop.js";

/** A file whose columns and times are understood, its values not yet read. */
export interface StationFile {
  readonly block: HeaderBlock;
  readonly preamble: Preamble;
  readonly layout: KnownLayout | undefined;
  readonly plans: readonly ColumnPlan[];
  readonly style: NumberStyle;
  readonly places: StampPlaces;
  readonly body: Body;
  readonly stamps: StampsRead;
  readonly rejected: RejectedRows;
}

/** Records before and after these years are none: the oldest rain gauges are of the 17th century. */
const firstYear = 1650;
const lastYear = 2200;

/** More rejected rows than this share mean that the file was not understood. */
const mostRejected = 0.2;

/** Finds header, columns, number style, and the time of every record. */
export function openStationFile(grid: Grid, answers: StationAnswers): StationFile | Stop {
  const block = named(findHeader(grid.rows), grid, answers);
  if (isStop(block)) return block;
  const titles = block.titles.map((row) => row.join(" "));
  const preamble = readPreamble(titles);
  const layout = layoutOf(block.names, titles.join("\n"));
  const plans = planColumns(block, preamble, layout, answers);
  if (isStop(plans)) return plans;
  const rows = plans.at(-1)?.role.kind === "notes" ? joinedNotes(grid.rows, block.names.length) : grid.rows;
  const body = bodyRows(rows, block.firstRecord, block.names);
  if (body.places.length === 0) return fault("no-values", "", "no records", "must have records below the header");
  const sample = spreadRows(rows, block.firstRecord, 300);
  const places = findStampPlaces(plans, block, sample, preamble, answers.year);
  if (places === undefined) {
    const seen = plans.map(({ header }) => header).join(", ");
    return fault(
      "no-dates",
      "",
      seen,
      "must have a date in one column or in several; name it by an answer like column:NAME=date",
    );
  }
  if (!plans.some(({ role }) => isQuantity(role))) {
    return fault(
      "no-values",
      "",
      plans.map(({ header }) => header).join(", "),
      "must have a column that is known; name it by an answer like column:NAME=rainMm",
    );
  }
  const valueCells = spreadRows(rows, block.firstRecord, 2000).flatMap((row) =>
    plans.filter(({ role }) => isQuantity(role)).map(({ index }) => row[index] ?? ""),
  );
  const style = numberStyle(valueCells, grid.delimiter === "comma" ? "," : "", answers);
  if (isStop(style)) return style;
  const stamps = readStamps(body, places, style, answers);
  if (isStop(stamps)) return stamps;
  const rejected = rejectedRows(body, stamps);
  if (rejected.count > mostRejected * (body.places.length + body.tooWide.count)) {
    const { line, text, reason } = rejected.first[0];
    return fault(
      "too-many-bad-rows",
      `line ${line}`,
      text,
      `${rejected.count} of ${body.places.length + body.tooWide.count} rows are not read, here: ${reason}`,
    );
  }
  return { block, preamble, layout, plans, style, places, body, stamps, rejected };
}

/** A header from the file or from the answer "columns"; without either the file is asked about. */
function named(block: HeaderBlock, { rows }: Grid, answers: StationAnswers): HeaderBlock | Stop {
  if (block.firstRecord < 0)
    return fault("no-values", "", cellsOf(rows, 0).join(" "), "must have records of numbers below the header");
  const answer = answers.columns;
  if (answer !== undefined) {
    const names = answer.split(",").map((name) => name.trim());
    const wrong = names.find((name) => answeredRole(name) === undefined);
    if (wrong !== undefined)
      return fault(
        "wrong-answer",
        "answer columns",
        wrong,
        "must list for every column ignore, date, time or the name of a quantity",
      );
    if (names.length < block.width)
      return fault("wrong-answer", "answer columns", `${names.length} names`, `must name all ${block.width} columns`);
    return { ...block, names };
  }
  if (block.names.length > 0) return block;
  const first = cellsOf(rows, block.firstRecord);
  return ask(
    "columns",
    `The file has no header. What is in its ${block.width} columns?`,
    [
      {
        value: first.map((_, c) => (c === 0 ? "date" : "ignore")).join(","),
        meaning:
          "names parted by commas, in the order of the columns: date, time, ignore, tMinC, tMaxC, rainMm and so on",
      },
    ],
    [first.join(" | ")],
  );
}

/** Rows without a time, or with a time in which nobody measured; their stamp becomes NaN. */
function rejectedRows({ rows, places, tooWide }: Body, { minutes }: StampsRead): RejectedRows {
  const least = dayNumberOf(firstYear, 1, 1) * 1440;
  const most = dayNumberOf(lastYear, 12, 31) * 1440;
  const first: RejectedRow[] = [];
  let { count } = tooWide;
  for (let i = 0; i < minutes.length; i++) {
    const time = minutes[i];
    if (time >= least && time <= most) continue;
    const reason = Number.isNaN(time)
      ? "no such date or time"
      : `${dateOf(Math.floor(time / 1440))} is no date of a record`;
    count++;
    if (first.length < mostRejectedKept) first.push(rejectedRow(rows, places[i], reason));
    minutes[i] = Number.NaN;
  }
  return { count, first: [...tooWide.first, ...first].sort((a, b) => a.line - b.line) };
}
