/** The inputs of a check, read by name and kind; a name that is not there is an error of the evaluator, not a NaN. */
export interface Given {
  readonly has: (name: string) => boolean;
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
  readonly numbers: (name: string) => readonly number[];
  readonly texts: (name: string) => readonly string[];
  /** A list of lists, such as cells of a table. */
  readonly rows: (name: string) => readonly (readonly (string | number)[])[];
}

/** @example givenOf({ kc: [0.6, 0.85] }).numbers("kc") */
export function givenOf(inputs: Readonly<Record<string, unknown>>): Given {
  const value = (name: string): unknown => {
    if (!Object.hasOwn(inputs, name)) throw new Error(`the check has no input ${name}`);
    return inputs[name];
  };
  const list = (name: string): readonly unknown[] => {
    const found = value(name);
    return Array.isArray(found) ? found : [found];
  };
  return {
    has: (name) => Object.hasOwn(inputs, name),
    number: (name) => numberOf(name, value(name)),
    text: (name) => textOf(name, value(name)),
    numbers: (name) => list(name).map((entry) => numberOf(name, entry)),
    texts: (name) => list(name).map((entry) => textOf(name, entry)),
    rows: (name) =>
      list(name).map((row) =>
        (Array.isArray(row) ? row : [row]).map((cell) => (typeof cell === "number" ? cell : textOf(name, cell))),
      ),
  };
}

function numberOf(name: string, value: unknown): number {
  if (typeof value !== "number") throw new Error(`input ${name} must be a number: got ${String(value)}`);
  return value;
}

function textOf(name: string, value: unknown): string {
  if (typeof value !== "string") throw new Error(`input ${name} must be text: got ${String(value)}`);
  return value;
}
