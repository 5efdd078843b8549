/** A sheet as it was given out, so that a later visit can hold it against what is advised then. */
export interface KeptSheet {
  readonly title: string;
  readonly lines: readonly string[];
  /** Address part that reopens the scene it was made of. */
  readonly link: string;
}

const key = "rootledger.sheets";
const mostKept = 8;

/** Sheets kept on this device, the newest first; none where storage is forbidden. */
export function keptSheets(): readonly KeptSheet[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "[]");
    return Array.isArray(kept) ? kept.filter(isKept).slice(0, mostKept) : [];
  } catch {
    return [];
  }
}

/** Keeps a sheet once; of a title kept before the newer one stays. Returns whether there was room. */
export function keepSheet(sheet: KeptSheet): boolean {
  const others = keptSheets().filter(({ title }) => title !== sheet.title);
  try {
    localStorage.setItem(key, JSON.stringify([sheet, ...others].slice(0, mostKept)));
    return true;
  } catch {
    return false;
  }
}

function isKept(value: unknown): value is KeptSheet {
  if (typeof value !== "object" || value === null) return false;
  const lines: unknown = Reflect.get(value, "lines");
  return (
    typeof Reflect.get(value, "title") === "string" &&
    typeof Reflect.get(value, "link") === "string" &&
    Array.isArray(lines) &&
    lines.every((line) => typeof line === "string")
  );
}
