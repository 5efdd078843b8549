import type { StationAnswers } from "./answers.js";
import type { NumberStyle } from "./read-number.js";
import { ask, type Stop } from "./stop.js";

/** What the cells of a sample say about the decimal sign. */
interface Votes {
  comma: number;
  point: number;
  /** "12.345" and "12,345": decimal in one style, thousands in the other. */
  unclearComma: number;
  unclearPoint: number;
  /** Cells that are numbers at all. */
  numbers: number;
  spaced: number;
  apostrophes: number;
  commaPlace: string;
  pointPlace: string;
}

/**
 * One number style for the whole file, from a sample of its cells. A comma with one, two or more than three digits after it, or
 * after a leading zero, is decimal, and so with a point. Where only groups of three digits are seen, the comma between
 * cells says that the point is decimal; else the file is asked about.
 */
export function numberStyle(cells: Iterable<string>, delimiter: string, answers: StationAnswers): NumberStyle | Stop {
  const votes: Votes = {
    comma: 0,
    point: 0,
    unclearComma: 0,
    unclearPoint: 0,
    numbers: 0,
    spaced: 0,
    apostrophes: 0,
    commaPlace: "",
    pointPlace: "",
  };
  for (const cell of cells) vote(cell, votes);
  const answer = answers.decimal;
  if (answer !== undefined) return styled(answer === "comma" ? "," : ".", votes);
  // Between commas a quoted decimal comma is a slip unless a tenth of the numbers have it.
  const slips = delimiter === "," && votes.comma < 0.1 * votes.numbers;
  if (votes.comma > votes.point && !slips) return styled(",", votes);
  if (votes.point > votes.comma || delimiter === ",") return styled(".", votes);
  if (votes.comma > 0) {
    return ask(
      "decimal",
      "Numbers are written with a decimal comma in some cells and with a decimal point in others.",
      choices,
      [votes.commaPlace, votes.pointPlace],
    );
  }
  if (votes.unclearComma === 0 && votes.unclearPoint === 0) return styled(".", votes);
  const place = votes.unclearComma > 0 ? votes.commaPlace : votes.pointPlace;
  return ask(
    "decimal",
    `Every decimal sign is followed by exactly three digits, such as ${place}: it may part thousands.`,
    choices,
    [place],
  );
}

const choices = [
  { value: "point", meaning: "12.345 is a little more than twelve" },
  { value: "comma", meaning: "12,345 is a little more than twelve" },
];

function styled(decimal: "." | ",", votes: Votes): NumberStyle {
  const other = decimal === "." ? "," : ".";
  const grouped = decimal === "." ? votes.unclearComma : votes.unclearPoint;
  const thousands = grouped > 0 ? other : votes.spaced > 0 ? " " : votes.apostrophes > 0 ? "'" : "";
  return { decimal, thousands };
}

const number = /^[+-]?\d*(?:[.,' \u00a0\u202f]\d+)+$/;

function vote(cell: string, votes: Votes): void {
  if (cell.length > 24) return;
  const text = cell.trim();
  if (/^[+-]?\d+$/.test(text)) votes.numbers++;
  if (!number.test(text)) return;
  votes.numbers++;
  const comma = text.lastIndexOf(",");
  const point = text.lastIndexOf(".");
  if (/^[+-]?\d{1,3}([ \u00a0\u202f]\d{3})+([.,]\d+)?$/.test(text)) votes.spaced++;
  if (/^[+-]?\d{1,3}('\d{3})+(\.\d+)?$/.test(text)) votes.apostrophes++;
  if (comma < 0 && point < 0) return;
  if (comma >= 0 && point >= 0) {
    // The last sign is the decimal one, if it stands once and the groups before it are of three digits.
    if (/^[+-]?\d{1,3}(\.\d{3})+,\d*$/.test(text)) {
      votes.comma++;
      votes.unclearPoint++;
    } else if (/^[+-]?\d{1,3}(,\d{3})+\.\d*$/.test(text)) {
      votes.point++;
      votes.unclearComma++;
    }
    return;
  }
  const sign = comma >= 0 ? "," : ".";
  const parts = text.split(sign);
  if (parts.length > 2) {
    if (/^[+-]?[1-9]\d{0,2}$/.test(parts[0]) && parts.slice(1).every((part) => part.length === 3)) {
      if (sign === ",") votes.point++;
      else votes.comma++;
      if (sign === ",") votes.unclearComma++;
      else votes.unclearPoint++;
    }
    return;
  }
  const clear = parts[1].length !== 3 || /^[+-]?0?$/.test(parts[0]) || parts[0].length > 4;
  if (sign === ",") {
    votes.commaPlace ||= text;
    if (clear) votes.comma++;
    else votes.unclearComma++;
  } else {
    votes.pointPlace ||= text;
    if (clear) votes.point++;
    else votes.unclearPoint++;
  }
}
