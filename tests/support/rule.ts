import type { Programme, PumpLimits, RuleClock, RuleKind } from "rootledger/programme";

/** A programme of one rule, every day at six in one run unless the clock says otherwise. */
export const ruled = (kind: RuleKind, clock: Partial<RuleClock> = {}, limits?: PumpLimits): Programme => ({
  name: kind.kind,
  runs: [],
  rule: { startH: 6, everyDays: 1, firstDay: 0, pulses: 1, gapMinutes: 0, ...clock, ...kind },
  ...(limits === undefined ? {} : { limits }),
});
