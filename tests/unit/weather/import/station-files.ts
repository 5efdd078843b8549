import { readFileSync } from "node:fs";
import { type ColumnReport, type StationColumn, type Understood, understandStationFile } from "rootledger/weather";
import { dataPath } from "../../../support/demo-files.js";

export type Read = Extract<Understood, { ok: true }>;

export const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(dataPath(`messy/${name}`)));

/** Bytes of a text, in Latin-1 where it is said, else in UTF-8. */
export const bytes = (text: string, encoding: "utf8" | "latin1" | "utf16le" = "utf8"): Uint8Array =>
  new Uint8Array(Buffer.from(text, encoding));

export function understood(file: Uint8Array | string, answers: Record<string, string> = {}): Read {
  const read = understandStationFile(typeof file === "string" ? bytes(file) : file, answers);
  if (!read.ok) throw new Error(JSON.stringify(read));
  return read;
}

/** What a file is asked about; fails if it is read or refused. */
export function asked(file: Uint8Array | string, answers: Record<string, string> = {}) {
  const read = understandStationFile(typeof file === "string" ? bytes(file) : file, answers);
  if (read.ok || read.question === undefined) throw new Error(`not asked: ${JSON.stringify(read).slice(0, 400)}`);
  return read.question;
}

/** The faults of a file that cannot be read. */
export function faults(file: Uint8Array | string, answers: Record<string, string> = {}): readonly string[] {
  const read = understandStationFile(typeof file === "string" ? bytes(file) : file, answers);
  if (read.ok || read.question !== undefined) throw new Error(`no faults: ${JSON.stringify(read).slice(0, 400)}`);
  return read.faults.map(({ code }) => code);
}

export function series({ table }: Read, name: string): StationColumn {
  const found = table.columns.find((column) => column.name === name);
  if (found === undefined)
    throw new Error(`no series ${name} among ${table.columns.map((column) => column.name).join(", ")}`);
  return found;
}

export function reported({ report }: Read, header: string): ColumnReport {
  const found = report.columns.find((column) => column.header === header);
  if (found === undefined) throw new Error(`no column ${header}`);
  return found;
}

export const total = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((sum, value) => sum + (Number.isNaN(value) ? 0 : value), 0);

/** How often a repair was made, 0 if never. */
export const repaired = ({ report }: Read, code: string): number =>
  report.repairs.filter((repair) => repair.code === code).reduce((sum, { count }) => sum + count, 0);
