import type { CheckResult } from "../truth/judge.js";
import type { Truth } from "../truth/read-published.js";
import { truthWords } from "../words.js";
import { textTable, wrapped } from "./text-table.js";

/** The whole answer of `truth` as text. */
export function truthText({ checks, counts, notApplicable }: Truth): string {
  const topics = [...new Set(checks.map(({ topic }) => topic))];
  const rows = (["seen", "memory", "derived", "all"] as const).map((name) => [
    truthWords.classes[name],
    String(counts[name].passed),
    String(counts[name].failed),
  ]);
  return [
    ...topics.map((topic) =>
      topicText(
        topic,
        checks.filter((check) => check.topic === topic),
      ),
    ),
    `${truthWords.notApplicable}\n`,
    ...notApplicable.map(({ id, source, reason }) => wrapped(`${id} (${source}): ${reason}`, "    ", "  ")),
    `\n${textTable(truthWords.counts, ["", ""], [["", ...truthWords.countColumns], ...rows])}`,
    wrapped(truthWords.legend),
  ].join("");
}

const topicText = (topic: string, checks: readonly CheckResult[]): string =>
  `${topic}\n${checks.map(checkText).join("")}\n`;

function checkText(check: CheckResult): string {
  const { id, title, source, printed, ours, tolerance, verified, toleranceWiderThanPrint, note, pass, misses } = check;
  const figures = Object.keys(printed).map((name) => {
    const fitted = toleranceWiderThanPrint.includes(name) ? ` ${truthWords.fitted}` : "";
    const allowed = ` +-${short(tolerance[name])}${fitted}`;
    return wrapped(
      `${name}: ${truthWords.printed} ${short(printed[name])}, ${truthWords.ours} ${short(ours[name])},${allowed}`,
      "        ",
      "      ",
    );
  });
  const head = `${pass ? truthWords.passes : truthWords.fails} ${id}: ${title}`;
  return [
    wrapped(head, "    ", "  "),
    wrapped(`${source}; ${truthWords.classes[verified]}`, "        ", "      "),
    ...figures,
    note === "" ? "" : wrapped(`${truthWords.note} ${note}`, "        ", "      "),
    ...misses.map((miss) => wrapped(`${truthWords.miss} ${miss}`, "        ", "      ")),
  ].join("");
}

/** A figure or list of figures to five digits. */
function short(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(short).join(" ")}]`;
  if (ArrayBuffer.isView(value)) return short(Array.from(value as Float64Array));
  return typeof value === "number" ? String(Number(value.toPrecision(5))) : String(value);
}
