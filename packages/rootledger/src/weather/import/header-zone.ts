/** Standard zones by their letters, minutes ahead of UTC. Source: ISO 8601 users' tables of national standard times, from memory. */
const named: Readonly<Record<string, number>> = {
  utc: 0,
  gmt: 0,
  cet: 60,
  mez: 60,
  mesz: 120,
  cest: 120,
  est: -300,
  cst: -360,
  mst: -420,
  pst: -480,
  brt: -180,
  aest: 600,
  nzst: 720,
};

/** Minutes ahead of UTC that a header names: "Date Time, GMT-07:00", "Zeit (UTC)", "time [UTC+2]". NaN where it names none. @example headerZone("Hora UTC") // 0 */
export function headerZone(header: string): number {
  const found =
    /(?:^|[^a-z])(utc|gmt|cest|cet|mesz|mez|est|cst|mst|pst|brt|aest|nzst)(?![a-z])\s*(?:([+-])(\d{1,2}):?(\d{2})?)?/i.exec(
      header.slice(0, 200),
    );
  if (found === null) return Number.NaN;
  const base = named[found[1].toLowerCase()];
  if (found[2] === undefined) return base;
  const minutes = Number(found[3]) * 60 + Number(found[4] ?? 0);
  return minutes > 14 * 60 ? Number.NaN : base + (found[2] === "-" ? -minutes : minutes);
}
