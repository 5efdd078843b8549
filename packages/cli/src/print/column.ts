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

/** The cells of one row as text. */
export const cellsOf = <Row>(columns: readonly Column<Row>[], row: Row): string[] =>
  columns.map(({ of }) => {
    const cell = of(row);
    return cell === undefined ? "" : String(cell);
  });
