import { dirname, resolve } from "node:path";
import type { Fault } from "rootledger/scenario";
import { filesNamed } from "rootledger/scenario";
import type { Io } from "./io.js";
import { jsonFaultAt } from "./json-fault.js";
import { unreadableReason } from "./unreadable-reason.js";
import { words } from "./words.js";

/** A fault as the command line prints it; the library's own faults fit. */
export type InputFault = Pick<Fault, "path" | "received" | "rule">;

export type Input =
  | { readonly ok: true; readonly value: unknown; readonly files: Readonly<Record<string, string>> }
  | { readonly ok: false; readonly faults: readonly InputFault[] };

/** A JSON file and the texts of the weather files that it names, found relative to it. */
export async function readInput(file: string, io: Io): Promise<Input> {
  const path = resolve(file);
  const text = await readText(path, io);
  if (!text.ok) return { ok: false, faults: [{ path: file, received: text.reason, rule: words.notReadable }] };
  const parsed = parseJson(text.text);
  if (!parsed.ok) return { ok: false, faults: [{ path: file, received: parsed.reason, rule: words.notJson }] };
  const files: Record<string, string> = {};
  for (const name of filesNamed(parsed.value)) {
    const weather = await readText(resolve(dirname(path), name), io);
    if (weather.ok) files[name] = weather.text;
  }
  return { ok: true, value: parsed.value, files };
}

/** A text, or why it could not be had. */
type Text = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly reason: string };

/** Reads one file as text. */
export async function readText(path: string, io: Io): Promise<Text> {
  try {
    return { ok: true, text: await io.readFile(path) };
  } catch (error) {
    return { ok: false, reason: unreadableReason(error) };
  }
}

type Json = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly reason: string };

/** A byte order mark at the start is skipped, as RFC 8259 section 8.1 allows. */
function parseJson(text: string): Json {
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  if (body.trim() === "") return { ok: false, reason: "an empty file" };
  try {
    return { ok: true, value: JSON.parse(body) };
  } catch {
    return { ok: false, reason: whereIn(body, jsonFaultAt(body) ?? body.length) };
  }
}

/** The place as line and column with the character found there. */
function whereIn(text: string, at: number): string {
  const lines = text.slice(0, at).split("\n");
  const found = at >= text.length ? words.endOfFile : JSON.stringify(String.fromCodePoint(text.codePointAt(at) ?? 0));
  return `${found} ${words.atLine} ${lines.length}, ${words.column} ${(lines.at(-1)?.length ?? 0) + 1}`;
}
