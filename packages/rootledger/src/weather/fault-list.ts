import type { WeatherFault, WeatherFaultCode } from "./weather-fault.js";

/** A wrong unit makes a fault on every line; after this many of one kind in one column the rest are only counted. Own choice. */
const mostOfOneKind = 20;

/** Where a fault is; line 0 and column "" stand for none. */
export interface FaultPlace {
  readonly line: number;
  readonly column: string;
}

/** Faults in the order of their finding, of each kind in a column the first twenty and a count of the rest. */
export interface FaultList {
  /** `rule` is worded only if the fault is kept, so that a long broken file costs little. */
  add(code: WeatherFaultCode, place: FaultPlace, received: string, rule: () => string): void;
  isEmpty(): boolean;
  all(): WeatherFault[];
}

/** @example newFaultList().isEmpty() // true */
export function newFaultList(): FaultList {
  const kept: WeatherFault[] = [];
  const counts = new Map<string, Map<WeatherFaultCode, number>>();
  return {
    add(code, place, received, rule) {
      let ofColumn = counts.get(place.column);
      if (ofColumn === undefined) {
        ofColumn = new Map();
        counts.set(place.column, ofColumn);
      }
      const count = (ofColumn.get(code) ?? 0) + 1;
      ofColumn.set(code, count);
      if (count > mostOfOneKind) return;
      kept.push({ code, path: pathText(place), received: received.slice(0, 60), rule: rule() });
    },
    isEmpty: () => kept.length === 0,
    all: () => [...kept, ...uncounted(counts)],
  };
}

const pathText = ({ line, column }: FaultPlace): string =>
  line === 0 ? column : column === "" ? `line ${line}` : `line ${line}, ${column}`;

function uncounted(counts: ReadonlyMap<string, ReadonlyMap<WeatherFaultCode, number>>): WeatherFault[] {
  const faults: WeatherFault[] = [];
  for (const [column, ofColumn] of counts) {
    for (const [code, count] of ofColumn) {
      if (count <= mostOfOneKind) continue;
      const rule = `has ${count - mostOfOneKind} more faults of the kind ${code}`;
      faults.push({ code: "too-many-faults", path: column, received: `${count} in all`, rule });
    }
  }
  return faults;
}
