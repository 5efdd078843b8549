import ts from "typescript";
import { parsedExpression } from "./example-lines.js";

/**
 * Whether a value is what a doc comment prints. Understood are numbers, to the digits printed (a unit or words may
 * follow; after "about" or before "..." to a whole unit of the last digit), "below" a number, and strings, lists and
 * objects of these, of which "..." leaves the rest open. Undefined where the print is none of them.
 */
export function agrees(printed: string, value: unknown): boolean | undefined {
  const below = /^below (\S+)/.exec(printed)?.[1];
  if (below !== undefined) return typeof value === "number" && Math.abs(value) < Number(below);
  const number = /^(about )?(-?\d[\d.]*?(?:e-?\d+)?)(\.\.\.)?(?:\s+[^\d\s].*)?$/i.exec(printed);
  if (number?.[2] !== undefined) return near(number[2], value, number[1] !== undefined || number[3] !== undefined);
  const literal = parsedExpression(printed.replace(/^\w+Array (?=\[)/, "").replaceAll("...", "rest"));
  return literal === undefined ? undefined : matches(literal, value);
}

function near(text: string, value: unknown, roughly: boolean): boolean {
  if (typeof value !== "number") return false;
  const [mantissa = "", exponent = "0"] = text.toLowerCase().split("e");
  const decimals = mantissa.split(".")[1]?.length ?? 0;
  const lastDigit = 10 ** (Number(exponent) - decimals);
  const rounding = 8 * Number.EPSILON * Math.abs(value);
  return Math.abs(value - Number(text)) <= (roughly ? 1 : 0.5) * lastDigit + rounding;
}

function matches(literal: ts.Expression, value: unknown): boolean | undefined {
  if (ts.isNumericLiteral(literal) || ts.isPrefixUnaryExpression(literal)) return near(literal.getText(), value, false);
  if (ts.isStringLiteral(literal)) return value === literal.text;
  if (literal.kind === ts.SyntaxKind.TrueKeyword) return value === true;
  if (literal.kind === ts.SyntaxKind.FalseKeyword) return value === false;
  if (ts.isIdentifier(literal)) {
    if (literal.text === "NaN") return Number.isNaN(value);
    return literal.text === "undefined" ? value === undefined : undefined;
  }
  if (ts.isArrayLiteralExpression(literal)) return matchesList(literal, value);
  return ts.isObjectLiteralExpression(literal) ? matchesObject(literal, value) : undefined;
}

function matchesList({ elements }: ts.ArrayLiteralExpression, value: unknown): boolean | undefined {
  if (!Array.isArray(value) && !ArrayBuffer.isView(value)) return false;
  const list = Array.from(value as ArrayLike<unknown>);
  const open = elements.at(-1)?.getText() === "rest";
  const shown = open ? elements.slice(0, -1) : elements;
  if (open ? list.length <= shown.length : list.length !== shown.length) return false;
  return all(shown.map((element, i) => matches(element, list[i])));
}

function matchesObject({ properties }: ts.ObjectLiteralExpression, value: unknown): boolean | undefined {
  if (typeof value !== "object" || value === null) return false;
  const entries = new Map(Object.entries(value));
  const shown = properties.filter(ts.isPropertyAssignment);
  const open = properties.some((property) => property.getText() === "rest");
  if (!open && entries.size !== shown.length) return false;
  return all(
    shown.map(({ name, initializer }) => matches(initializer, entries.get(name.getText().replaceAll('"', "")))),
  );
}

const all = (answers: readonly (boolean | undefined)[]): boolean | undefined =>
  answers.includes(undefined) ? undefined : answers.every((answer) => answer === true);
