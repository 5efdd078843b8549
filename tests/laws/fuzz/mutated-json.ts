import fc from "fast-check";

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** Every place in a JSON value, as a list of keys. */
function places(value: unknown, at: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null) return [at];
  const keys = Array.isArray(value) ? value.keys() : Object.keys(value);
  return [at, ...[...keys].flatMap((key) => places((value as Record<string | number, unknown>)[key], [...at, key]))];
}

const strange: fc.Arbitrary<unknown> = fc.oneof(
  fc.jsonValue(),
  fc.double({ noDefaultInfinity: true, noNaN: true }),
  fc.integer({ min: -3, max: 400 }),
  fc.constantFrom<unknown>(undefined, 0, -0, 1e308, 5e-324, "", "__proto__", "NaN", "2025-02-30", [], {}, [[]], null),
);

type Edit = (value: unknown) => unknown;

const edits: fc.Arbitrary<Edit> = fc.oneof(
  strange.map((other) => () => other),
  fc
    .double({ min: -4, max: 4, noNaN: true })
    .map((power) => (value: unknown) => (typeof value === "number" ? value * 10 ** power : value)),
  fc.constantFrom<Edit>(
    (value) => (typeof value === "number" ? -value : value),
    (value) => (Array.isArray(value) ? [...value, ...value] : value),
    (value) => (Array.isArray(value) ? value.slice(1) : value),
    (value) => (Array.isArray(value) ? value.slice().reverse() : value),
    (value) => (typeof value === "object" && value !== null ? { ...value, other: 1 } : value),
    (value) => (typeof value === "string" ? `${value}${value}` : value),
  ),
);

/** A JSON file with one to four of its values changed, removed, doubled or put in another's place. */
export function mutatedJson(file: unknown): fc.Arbitrary<Json> {
  const all = places(file);
  const one = fc.record({
    at: fc.constantFrom(...all),
    from: fc.option(fc.constantFrom(...all), { nil: undefined, freq: 6 }),
    edit: edits,
  });
  return fc.array(one, { minLength: 1, maxLength: 4 }).map((changes) => {
    let copy: unknown = structuredClone(file);
    for (const { at, from, edit } of changes) {
      const value = from === undefined ? edit(valueAt(copy, at)) : structuredClone(valueAt(copy, from));
      copy = withValue(copy, at, value);
    }
    return (copy === undefined ? null : copy) as Json;
  });
}

function valueAt(file: unknown, at: readonly (string | number)[]): unknown {
  let value = file;
  for (const key of at) value = (value as Record<string | number, unknown> | null | undefined)?.[key];
  return value;
}

function withValue(file: unknown, at: readonly (string | number)[], value: unknown): unknown {
  const last = at.at(-1);
  if (last === undefined) return value;
  const place = valueAt(file, at.slice(0, -1));
  if (typeof place !== "object" || place === null) return file;
  if (value === undefined) delete (place as Record<string | number, unknown>)[last];
  else (place as Record<string | number, unknown>)[last] = value;
  return file;
}

/** A text with some of its characters, lines and cells lost, doubled, moved or replaced. */
export function damagedText(text: string): fc.Arbitrary<string> {
  const lines = text.split("\n");
  const line = fc.nat(lines.length - 1);
  const damage = fc.oneof(
    fc.tuple(line, fc.string({ unit: "binary", maxLength: 12 })).map(
      ([at, put]) =>
        (all: string[]) =>
          replaced(all, at, put),
    ),
    fc
      .tuple(line, fc.nat(60), fc.constantFrom("", ",", '"', "NaN", "-", "1e999", "\uFEFF", "\0", "x", ";", "\r"))
      .map(([at, where, put]) => (all: string[]) => {
        const row = all[at % all.length] ?? "";
        const cut = where % (row.length + 1);
        return replaced(all, at, row.slice(0, cut) + put + row.slice(cut + 1));
      }),
    fc.tuple(line, line).map(([at, to]) => (all: string[]) => [
      ...all.slice(0, to),
      all[at % all.length] ?? "",
      ...all.slice(to),
    ]),
    line.map((at) => (all: string[]) => (all.length > 1 ? all.filter((_, i) => i !== at % all.length) : all)),
    fc.nat(text.length).map((length) => (all: string[]) => all.join("\n").slice(0, length).split("\n")),
  );
  return fc
    .array(damage, { minLength: 1, maxLength: 4 })
    .map((some) => some.reduce((all, one) => one(all), lines).join("\n"));
}

const replaced = (all: readonly string[], at: number, put: string): string[] =>
  all.map((one, i) => (i === at % all.length ? put : one));
