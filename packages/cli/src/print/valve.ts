import type { Result } from "rootledger";
import { words } from "../words.js";

/** How often and how long the valve opens. @example valveText(result) // "84 openings of 3 h 45 min" */
export function valveText({ valveH }: Pick<Result, "valveH">): string {
  const lengths = new Set<number>();
  for (let i = 0; i + 1 < valveH.length; i += 2)
    lengths.add(Math.round(((valveH[i + 1] ?? 0) - (valveH[i] ?? 0)) * 60));
  const count = Math.floor(valveH.length / 2);
  const [only] = lengths;
  if (lengths.size !== 1 || only === undefined) return `${count} ${words.asPlanned}`;
  return `${count} ${count === 1 ? words.opening : words.openings} ${clockLength(only)}`;
}

function clockLength(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  return [hours > 0 ? `${hours} h` : "", rest > 0 || hours === 0 ? `${rest} min` : ""]
    .filter((part) => part !== "")
    .join(" ");
}
