import { type Evaluator, evaluators } from "./evaluators.js";
import { type Figure, figures } from "./figures.js";
import { givenOf } from "./given.js";
import type { PublishedCheck, Verified } from "./published-check.js";

/** A check with our figures beside the printed ones. */
export interface CheckResult {
  readonly id: string;
  readonly topic: string;
  readonly title: string;
  readonly source: string;
  /** By figure; a figure may be a list. */
  readonly printed: Readonly<Record<string, unknown>>;
  readonly ours: Readonly<Record<string, unknown>>;
  /** Allowed distance of each figure, in its own unit. */
  readonly tolerance: Readonly<Record<string, number>>;
  readonly toleranceWiderThanPrint: readonly string[];
  readonly verified: Verified;
  readonly note: string;
  readonly pass: boolean;
  /** Figures that miss, for instance "kc_mid[1]: ours 1.31, printed 1.30". */
  readonly misses: readonly string[];
}

/** The evaluator of a check: its own, or that of its topic. */
export const evaluatorOf = ({ id, topic }: Pick<PublishedCheck, "id" | "topic">): Evaluator | undefined =>
  evaluators[id] ?? evaluators[topic];

/** Runs a check. Without an evaluator, or where it throws, the check fails and says why. */
export function judge(check: PublishedCheck): CheckResult {
  const { id, topic, title, source, verified, note, toleranceWiderThanPrint } = check;
  const names = Object.keys(check.expected);
  const allowed = (name: string): number => Math.max(0, ...allowances(check, name));
  const common = { id, topic, title, source, printed: check.expected, toleranceWiderThanPrint, verified, note };
  const tolerance = Object.fromEntries(names.map((name) => [name, allowed(name)]));
  const evaluate = evaluatorOf(check);
  if (evaluate === undefined) {
    return {
      ...common,
      tolerance,
      ours: {},
      pass: false,
      misses: ["no function of the library is tied to this check"],
    };
  }
  try {
    const all = evaluate(givenOf(check.inputs), names);
    const ours = Object.fromEntries(names.map((name) => [name, all[name]]));
    const misses = names.flatMap((name) => missesOf(check, name, ours[name]));
    return { ...common, tolerance, ours, pass: misses.length === 0, misses };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { ...common, tolerance, ours: {}, pass: false, misses: [reason] };
  }
}

function missesOf(check: PublishedCheck, name: string, ours: unknown): string[] {
  const theirs = figures(check.expected[name]);
  const mine = figures(ours);
  if (mine.length !== theirs.length) return [`${name}: ours has ${mine.length} figures, printed ${theirs.length}`];
  const allowed = allowances(check, name);
  return theirs.flatMap((printed, at) => {
    const found = mine[at];
    if (found !== undefined && agrees(name, found, printed, allowed[at] ?? 0)) return [];
    const place = theirs.length > 1 ? `[${at}]` : "";
    return [`${name}${place}: ours ${found}, printed ${printed}`];
  });
}

/** Doubles: a figure exactly at its tolerance must not fail by its last bits. */
const lastBits = 1e-9;

/** A figure named low... or high... is the end of a published range, within which ours must lie. */
function agrees(name: string, ours: Figure, printed: Figure, allowed: number): boolean {
  if (typeof ours !== "number" || typeof printed !== "number") return ours === printed;
  if (!Number.isFinite(ours)) return false;
  const slack = allowed + lastBits * Math.max(1, Math.abs(printed));
  if (/^low[A-Z]/.test(name)) return ours >= printed - slack;
  if (/^high[A-Z]/.test(name)) return ours <= printed + slack;
  return Math.abs(ours - printed) <= slack;
}

/** Allowed distances of the figures of one name. */
function allowances({ tolerance, expected }: PublishedCheck, name: string): number[] {
  const size = (figure: Figure): number => (typeof figure === "number" ? Math.abs(figure) : 0);
  return figures(expected[name]).map((figure) => {
    if (typeof tolerance === "number") return tolerance;
    const of = (key: string): number | undefined => {
      const value = tolerance[key];
      return typeof value === "number" ? value : undefined;
    };
    const percent = name.endsWith("Percent") ? of("percent") : undefined;
    const water = name.startsWith("theta") ? of("theta") : undefined;
    const drained = name.startsWith("drained") ? of("drainedRelative") : undefined;
    const share = drained ?? of("relative");
    return of(name) ?? percent ?? water ?? (share === undefined ? (of("absolute") ?? 0) : share * size(figure));
  });
}
