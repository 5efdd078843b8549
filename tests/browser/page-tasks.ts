/** Thread time, not clock time, of the page's tasks, ms: other work on the machine must not count. */
export function tasksIn(trace: string): number[] {
  const { traceEvents } = JSON.parse(trace) as { traceEvents: TraceEvent[] };
  const thread = (e: TraceEvent): string => `${e.pid}:${e.tid}`;
  const main = new Set(traceEvents.filter((e) => e.args?.name === "CrRendererMain").map(thread));
  return traceEvents
    .filter((e) => e.name.endsWith("RunTask") && e.tdur !== undefined && main.has(thread(e)))
    .map((e) => (e.tdur ?? 0) / 1000)
    .sort((a, b) => a - b);
}

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Value below which a share of sorted values lies. */
export const shareOf = (sorted: readonly number[], share: number): number =>
  Number((sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0).toFixed(1));
