import type { WeatherFault } from "./weather-fault.js";

/** A wrong unit makes a fault on every line; after this many of one kind in one column the rest are only counted. Own choice. */
const mostOfOneKind = 20;

/** The faults in their order, those of one kind and column beyond the twentieth replaced by one that says how many there are. */
export function gatherFaults(faults: readonly WeatherFault[]): WeatherFault[] {
  const seen = new Map<string, number>();
  const kept: WeatherFault[] = [];
  for (const fault of faults) {
    const kind = kindOf(fault);
    const count = (seen.get(kind) ?? 0) + 1;
    seen.set(kind, count);
    if (count <= mostOfOneKind) kept.push(fault);
  }
  for (const [kind, count] of seen) {
    if (count <= mostOfOneKind) continue;
    const [code, column] = kind.split(" ");
    const rule = `has ${count - mostOfOneKind} more faults of the kind ${code}`;
    kept.push({ code: "too-many-faults", path: column, received: `${count} in all`, rule });
  }
  return kept;
}

const kindOf = (fault: WeatherFault): string => `${fault.code} ${fault.path.split(", ")[1] ?? ""}`;
