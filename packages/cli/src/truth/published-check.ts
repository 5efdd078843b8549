/** How a printed figure came to us: read in print, recalled, or worked out by us from a published formula (then it proves little). */
export type Verified = "seen" | "memory" | "derived";

/** One published check as the data files hold it. */
export interface PublishedCheck {
  readonly id: string;
  readonly topic: string;
  readonly title: string;
  readonly source: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, unknown>>;
  /** One number for every figure; or by figure; or `relative` or `absolute` for all. */
  readonly tolerance: number | Readonly<Record<string, unknown>>;
  /** Figures whose tolerance is wider than half a printed unit, fitted to what was found. */
  readonly toleranceWiderThanPrint: readonly string[];
  readonly verified: Verified;
  readonly note: string;
}

/** A published figure that is not checked, and why. */
export interface NotApplicable {
  readonly id: string;
  readonly topic: string;
  readonly source: string;
  readonly reason: string;
}

/** The checks of one data file; undefined where the text is not a list of checks. */
export const parseChecks = (text: string): readonly PublishedCheck[] | undefined => parseList(text, checkOf);

/** The list of figures that are not checked. */
export const parseNotApplicable = (text: string): readonly NotApplicable[] | undefined => parseList(text, reasonOf);

function parseList<T>(text: string, of: (entry: Readonly<Record<string, unknown>>) => T | undefined) {
  let list: unknown;
  try {
    list = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!Array.isArray(list)) return undefined;
  const read = list.map((entry: unknown) => (isRecord(entry) ? of(entry) : undefined));
  const good = read.filter((entry) => entry !== undefined);
  return good.length === read.length ? good : undefined;
}

function checkOf(entry: Readonly<Record<string, unknown>>): PublishedCheck | undefined {
  const { id, topic, title, source, inputs, expected, tolerance, verified, note, toleranceWiderThanPrint } = entry;
  if (typeof id !== "string" || typeof topic !== "string" || typeof source !== "string") return undefined;
  if (verified !== "seen" && verified !== "memory" && verified !== "derived") return undefined;
  if (!isRecord(inputs) || !isRecord(expected)) return undefined;
  if (typeof tolerance !== "number" && !isRecord(tolerance)) return undefined;
  const wider = Array.isArray(toleranceWiderThanPrint) ? toleranceWiderThanPrint.map(String) : [];
  const reason = typeof tolerance === "object" ? tolerance.reason : undefined;
  const notes = [note, reason].filter((text) => typeof text === "string");
  const words = { title: typeof title === "string" ? title : topic, note: notes.join("; ") };
  return { id, topic, source, inputs, expected, tolerance, verified, toleranceWiderThanPrint: wider, ...words };
}

function reasonOf({ id, topic, source, reason }: Readonly<Record<string, unknown>>): NotApplicable | undefined {
  if (typeof id !== "string" || typeof topic !== "string" || typeof source !== "string") return undefined;
  return typeof reason === "string" ? { id, topic, source, reason } : undefined;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
