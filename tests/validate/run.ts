import { mkdirSync, writeFileSync } from "node:fs";
import { fittedSoils, storeFittedSoils } from "./fitted-soils.js";
import { plotStation } from "./plot-station.js";
import { stations } from "./stations.js";
import { type StationReport, validateStation } from "./validate-station.js";

/** Rounds of the fit; more moved no score in the third digit. */
export const fitRounds = 12;

/**
 * Fits every station (or takes what is stored), scores it on unseen blocks and draws it.
 *
 * @param plots folder for the pictures
 */
export function validateStations(choice: {
  readonly soils: "fit" | "fit-and-store" | "stored";
  readonly plots: string;
  readonly progress?: (line: string) => void;
}): StationReport[] {
  mkdirSync(choice.plots, { recursive: true });
  const stored = choice.soils === "stored" ? fittedSoils() : {};
  const reports = stations.map((station) => {
    choice.progress?.(station.name);
    const values = stored[station.name];
    const done = validateStation(station, values === undefined ? { iterations: fitRounds } : { values });
    writeFileSync(`${choice.plots}/${station.record}.svg`, plotStation(done));
    return done.report;
  });
  if (choice.soils === "fit-and-store") {
    storeFittedSoils(Object.fromEntries(reports.map(({ name, parameters }) => [name, parameters])));
  }
  return reports;
}
