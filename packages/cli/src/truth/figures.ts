/** One compared value. */
export type Figure = number | string;

/** What an evaluator gives, by the names of the printed figures; a figure may be a list of lists. */
export type Values = Readonly<Record<string, unknown>>;

/** The figures of a value in order, lists flattened; anything else counts as text. @example figures([1, [2, 3]]) */
export function figures(value: unknown): readonly Figure[] {
  if (Array.isArray(value)) return value.flatMap(figures);
  if (ArrayBuffer.isView(value)) return Array.from(value as Float64Array);
  return [typeof value === "number" ? value : String(value)];
}
