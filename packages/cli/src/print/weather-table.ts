import { packageText } from "./table.js";

/** What the columns of weather and sensor files are, by name without depth and number; the unit is the end of each name. */
const quantities: Readonly<Record<string, readonly [unit: string, meaning: string]>> = {
  tMeanC: ["degC", "mean air temperature"],
  tMinC: ["degC", "lowest air temperature"],
  tMaxC: ["degC", "highest air temperature"],
  rhMeanPct: ["%", "mean relative humidity"],
  rhMinPct: ["%", "lowest relative humidity"],
  rhMaxPct: ["%", "highest relative humidity"],
  dewPointC: ["degC", "dew point"],
  vapourPressureKPa: ["kPa", "vapour pressure"],
  windMPerS: ["m/s", "wind speed at the station's height"],
  gustMPerS: ["m/s", "strongest gust"],
  windDirectionDeg: ["deg", "direction that the wind comes from, clockwise from north"],
  solarMJPerM2: ["MJ/m2", "solar radiation on level ground"],
  sunshineH: ["h", "bright sunshine"],
  rainMm: ["mm", "rain"],
  panMm: ["mm", "evaporation of a Class A pan"],
  et0Mm: ["mm", "reference evapotranspiration"],
  pressureKPa: ["kPa", "air pressure"],
  soilTempC: ["degC", "soil temperature"],
  soilMoistureM3PerM3: ["m3/m3", "volumetric water content of the soil"],
  soilTensionKPa: ["kPa", "soil water tension"],
  irrigationMm: ["mm", "water given"],
  irrigationM3: ["m3", "water given"],
};

/** What the columns of a weather file are that `--csv` writes; records carry marks, so that their cells are texts. */
export function weatherSchema(text: string, kind: "days" | "records"): string {
  const header = text.slice(0, text.indexOf("\n"));
  const [stamp = "", ...names] = header.split(",");
  const type = kind === "days" ? ("number" as const) : ("string" as const);
  const columns = names.map((name) => {
    const [, quantity = name, depth] = /^([A-Za-z0-9]+?)(?:_(\d+(?:\.\d+)?)cm)?(?:_\d+)?$/.exec(name) ?? [];
    const [unit = "", meaning = name] = quantities[quantity] ?? [];
    const where = depth === undefined ? "" : `, ${depth} cm deep`;
    const marks =
      kind === "days"
        ? ""
        : "; a number, T for a trace, Acum where a later record holds it, > or < beyond the instrument, ? doubtful";
    return { name, type, unit, description: `${meaning}${where}${marks}` };
  });
  const first = {
    name: stamp,
    type: kind === "days" ? ("date" as const) : ("string" as const),
    description: "local standard time",
  };
  const title = kind === "days" ? "Daily weather" : "Records of a station or of sensors";
  return packageText({ name: kind, title, columns: [first, ...columns] }, `${kind}.csv`);
}
