import { type Column, cellsOf } from "./column.js";
import { csvText } from "./csv-text.js";
import { jsonText } from "./json.js";

/** A table with what it is: the same columns write it and describe it. */
export interface Table {
  /** Lower-case letters and hyphens. */
  readonly name: string;
  readonly title: string;
  readonly columns: readonly Omit<Column<never>, "of">[];
  /** Its lines, without the header. */
  readonly lines: readonly (readonly string[])[];
}

/** A table of rows. */
export const tableOf = <Row>(
  name: string,
  title: string,
  columns: readonly Column<Row>[],
  rows: readonly Row[],
): Table => ({ name, title, columns, lines: rows.map((row) => cellsOf(columns, row)) });

/** The table as CSV, or what its columns are. */
export const tableText = (table: Table, output: "csv" | "schema"): string =>
  output === "csv"
    ? csvText([table.columns.map(({ name }) => name), ...table.lines])
    : packageText(table, `${table.name}.csv`);

/** A table alone in its package, as `datapackage.json` holds it. */
export const packageText = (table: Omit<Table, "lines">, path: string): string =>
  jsonText({ profile: "tabular-data-package", name: `rootledger-${table.name}`, resources: [resourceOf(table, path)] });

/** A table as a resource of a data package (Frictionless Standards, data package v1, table schema v1). */
const resourceOf = ({ name, title, columns }: Omit<Table, "lines">, path: string) => ({
  ...{ name, path, title, profile: "tabular-data-resource", format: "csv", mediatype: "text/csv", encoding: "utf-8" },
  schema: { fields: columns, missingValues: [""] },
});

/** Columns of one kind each, to be written in a line. */
export const textColumn = <Row>(name: string, description: string, of: Column<Row>["of"]): Column<Row> => ({
  ...{ name, type: "string", description, of },
});

export const numberColumn = <Row>(
  name: string,
  unit: string,
  description: string,
  of: Column<Row>["of"],
): Column<Row> => ({ ...{ name, type: "number", unit, description, of } });
