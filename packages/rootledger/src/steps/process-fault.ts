/** The slots that `ownProcesses` fills. */
export type SlotName = "stress" | "uptake" | "evaporation" | "source";

/** What an own process did that the engine cannot carry out. */
export interface ProcessFault {
  readonly code: "not-finite" | "negative" | "above-demand" | "more-than-available" | "more-than-fits" | "not-a-share";
  /** Like "uptake, cell 12, hour 31". */
  readonly path: string;
  readonly received: number;
  readonly rule: string;
}

/**
 * An error that ends a run with its reason, and carries the fault as data in `fault`. A cell is counted layer by layer, lanes from
 * the tree row outward.
 *
 * @example processError("uptake", "negative", 12, 31, -0.3, "a rate of 0 cm3/h or more").fault.path // "uptake, cell 12, hour 31"
 */
export function processError(
  slot: SlotName,
  code: ProcessFault["code"],
  cell: number,
  hour: number,
  received: number,
  rule: string,
): RangeError & { readonly fault: ProcessFault } {
  const path = `${slot}, ${cell < 0 ? "all cells" : `cell ${cell}`}, hour ${hour}`;
  const fault: ProcessFault = { code, path, received, rule };
  return Object.assign(new RangeError(`the slot ${slot} requires ${rule}: got ${received} (${path})`), { fault });
}
