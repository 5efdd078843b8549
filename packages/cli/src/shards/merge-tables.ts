import { join } from "node:path";
import type { Cell } from "../print/column.js";
import { csvText } from "../print/csv-text.js";
import { packageText } from "../print/table.js";
import { csvRecords } from "./csv-records.js";
import type { Disk } from "./disk.js";
import type { TableColumn } from "./head.js";
import { parquetFile } from "./parquet-file.js";
import type { FoundPart } from "./read-part.js";
import { writeText } from "./write-text.js";

/**
 * Writes the tables of shards, which come in their order, as one table sorted by member: `members.csv` and `members.parquet`.
 * Row by row, so that memory does not grow with them.
 */
export async function mergeTables(disk: Disk, parts: readonly FoundPart[], folder: string): Promise<void> {
  const columns = parts[0]?.ensemble.columns ?? [];
  await disk.makeFolder(folder);
  const csv = await disk.create(join(folder, "members.csv"));
  const parquet = await parquetFile(disk, join(folder, "members.parquet"), columns);
  try {
    await csv.write(csvText([columns.map(({ name }) => name)]));
    for (const part of parts) {
      const name = part.files.find((file) => file.name.endsWith(".csv"))?.name ?? "";
      let header = true;
      for await (const record of csvRecords(disk.lines(join(part.folder, name)))) {
        if (!header) {
          await csv.write(csvText([record]));
          await parquet.add(columns.map((column, i) => cellOf(column, record[i] ?? "")));
        }
        header = false;
      }
    }
    await csv.keep();
    await parquet.keep();
    const table = { name: "members", title: "Members of an ensemble: draws and measures", columns };
    await writeText(disk, join(folder, "datapackage.json"), packageText(table, "members.csv"));
  } catch (error) {
    await Promise.all([csv.drop(), parquet.drop()]);
    throw error;
  }
}

/** A cell's value back from its text; the shortest text of a number gives the same number again. */
const cellOf = ({ type }: TableColumn, text: string): Cell =>
  text === "" ? undefined : type === "number" || type === "integer" ? Number(text) : text;
