import { ByteWriter, ParquetWriter } from "hyparquet-writer";
import { version } from "rootledger";
import type { Cell } from "../print/column.js";
import type { Digest, Disk } from "./disk.js";
import type { TableColumn } from "./head.js";

/** Rows of one row group. Fixed, so that the file depends on its rows alone. Our choice: some megabytes at a time. */
const groupRows = 8192;

/** A Parquet file that takes rows one by one and holds one row group in memory. */
export interface ParquetFile {
  readonly add: (cells: readonly Cell[]) => Promise<void>;
  readonly keep: () => Promise<Digest>;
  readonly drop: () => Promise<void>;
}

/** Starts a Parquet file: whole numbers as INT32, numbers as DOUBLE, the rest as UTF-8 text; an absent cell is null. */
export async function parquetFile(disk: Disk, path: string, columns: readonly TableColumn[]): Promise<ParquetFile> {
  const file = await disk.create(path);
  const bytes = new ByteWriter();
  const schema = [{ name: "root", num_children: columns.length }, ...columns.map(schemaElement)];
  const writer = new ParquetWriter({ writer: bytes, schema, createdBy: `rootledger ${version}` });
  let rows: (readonly Cell[])[] = [];
  const flush = async (): Promise<void> => {
    const piece = bytes.getBytes().slice();
    bytes.index = 0;
    await file.write(piece);
  };
  const group = async (): Promise<void> => {
    if (rows.length === 0) return;
    const columnData = columns.map(({ name }, i) => ({ name, data: rows.map((cells) => cells[i] ?? null) }));
    rows = [];
    await writer.write({ columnData, rowGroupSize: groupRows });
    await flush();
  };
  return {
    add: async (cells) => {
      rows.push(cells);
      if (rows.length === groupRows) await group();
    },
    keep: async () => {
      await group();
      await writer.finish();
      await flush();
      return file.keep();
    },
    drop: file.drop,
  };
}

function schemaElement({ name, type }: TableColumn) {
  const repetition_type = "OPTIONAL" as const;
  if (type === "integer") return { name, type: "INT32", repetition_type } as const;
  if (type === "number") return { name, type: "DOUBLE", repetition_type } as const;
  return { name, type: "BYTE_ARRAY", converted_type: "UTF8", repetition_type } as const;
}
