import type { StationQuestion } from "rootledger/weather";
import { words } from "../words.js";
import { wrapped } from "./text-table.js";

/** A question about a file, with the ways to answer it on the command line. */
export function questionText(file: string, { key, text, choices, evidence }: StationQuestion): string {
  const places = evidence.map((place) => `  ${words.fromFile}: ${place}\n`).join("");
  const ways = choices.map(({ value, meaning }) =>
    wrapped(`--answer ${quoted(`${key}=${value}`)}   ${meaning}`, "      ", "    "),
  );
  return `${wrapped(`${file}: ${words.asks} ${text}`)}${places}  ${words.answerBy}\n${ways.join("")}`;
}

const quoted = (text: string): string => (/[^\w=:.,+-]/.test(text) ? `"${text.replaceAll('"', '\\"')}"` : text);
