import type { Files } from "rootledger/scenario";
import type { FaultLine } from "./protocol.js";

/** Weather files with other rain on single days, or the day that a record does not have. Rain is the last column of the demo's record. */
export function withRain(files: Files, rainMm: Readonly<Record<string, number>>): Files | FaultLine {
  const days = Object.keys(rainMm);
  if (days.length === 0) return files;
  const entries = Object.entries(files).map(([name, text]) => [name, text.split("\n")] as const);
  for (const day of days) {
    const known = entries.flatMap(([, lines]) => lines.filter((line) => /^\d/.test(line)).map(dateOf));
    if (known.includes(day)) continue;
    const [from, to] = [known[0] ?? "", known.at(-1) ?? ""];
    const rule = `must be a day of the season, from ${from} to ${to}`;
    return { code: "date-outside-season", path: "rain", received: day, rule, terms: { from, to } };
  }
  return Object.fromEntries(
    entries.map(([name, lines]) => [
      name,
      lines
        .map((line) =>
          Object.hasOwn(rainMm, dateOf(line)) ? line.replace(/,[^,]*$/, `,${rainMm[dateOf(line)]}`) : line,
        )
        .join("\n"),
    ]),
  );
}

const dateOf = (line: string): string => line.slice(0, 10);
