import { csvText } from "./csv-text.js";

/** What a cell may hold; an absent value is an empty cell. */
export type Cell = string | number | undefined;

/** A column of a table that the command line writes: its own description and how to get it from a row. */
export interface Column<Row> {
  readonly name: string;
  readonly type: "string" | "integer" | "number" | "date" | "datetime";
  /** Absent where there is none, as of a name. */
  readonly unit?: string;
  readonly description: string;
  readonly of: (row: Row) => Cell;
}

/** A table as CSV: names of the columns, then a line for each row; point decimals at full precision. */
export const tableCsv = <Row>(columns: readonly Column<Row>[], rows: readonly Row[]): string =>
  csvText([columns.map(({ name }) => name), ...rows.map((row) => cellsOf(columns, row))]);

/** The cells of one row as text. */
export const cellsOf = <Row>(columns: readonly Column<Row>[], row: Row): string[] =>
  columns.map(({ of }) => {
    const cell = of(row);
    return cell === undefined ? "" : String(cell);
  });
