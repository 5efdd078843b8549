const key = "rootledger.work";

/** The address part of what was last set on this device; undefined where there is none or storage is forbidden. */
export function keptWork(): string | undefined {
  try {
    const kept = localStorage.getItem(key);
    return kept?.startsWith("#v=") ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps an address part; an empty one changes nothing, so that opening the page afresh does not lose the work. */
export function keepWork(link: string): void {
  if (link === "") return;
  try {
    localStorage.setItem(key, link);
  } catch {
    // Without storage the work is in the address alone.
  }
}
