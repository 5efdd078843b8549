import type { StationFile } from "./station-file.js";
import type { StationSite } from "./station-report.js";

/** The site by the preamble, by columns of latitude, longitude and elevation in the first record, and by the layout. */
export function siteColumns({ plans, body, style, preamble, layout }: StationFile): StationSite {
  body.rows.open(body.places[0]);
  const first = (kind: "latitude" | "longitude" | "elevation", most: number): number | undefined => {
    const plan = plans.find(({ role }) => role.kind === kind);
    const value = plan === undefined ? Number.NaN : body.rows.number(plan.index, style);
    return Math.abs(value) <= most ? value : undefined;
  };
  const latitudeDeg = first("latitude", 90);
  const longitudeDeg = first("longitude", 180);
  const elevationM = first("elevation", 9000);
  return {
    ...preamble.site,
    ...(latitudeDeg === undefined ? {} : { latitudeDeg }),
    ...(longitudeDeg === undefined ? {} : { longitudeDeg }),
    ...(elevationM === undefined ? {} : { elevationM }),
    ...(layout?.windHeightM === undefined ? {} : { windHeightM: layout.windHeightM }),
  };
}
