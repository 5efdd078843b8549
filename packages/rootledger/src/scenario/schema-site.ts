import { z } from "zod";
import { defaults } from "./defaults.js";
import type { SiteWeather } from "./scenario.js";
import { between, orDefault } from "./schema-fields.js";

/** A site as a file gives it, with the way its reference evapotranspiration is found. */
export interface SiteFile {
  latitudeDeg: number;
  elevationM: number;
  windHeightM?: number | undefined;
  et0Method?: SiteWeather["et0Method"] | undefined;
  panCoefficient?: number | undefined;
}

/** Fields of a site, for the schemas of weather. */
export const siteFields: { [Field in keyof SiteFile]-?: z.ZodType<SiteFile[Field]> } = {
  latitudeDeg: between(-66, 66, "Latitude, degrees, south negative; the day-length formulas end at the polar circles."),
  elevationM: between(-430, 5000, "Height above the sea, m."),
  windHeightM: orDefault(between(0.5, 100, "Height at which wind was measured, m."), defaults.windHeightM),
  et0Method: orDefault<SiteWeather["et0Method"]>(
    z
      .enum(["penman-monteith", "asce-short", "hargreaves-samani", "pan", "given"])
      .describe(
        "How reference evapotranspiration is found. asce-short: the short surface of ASCE-EWRI (2005). pan: the file's pan times panCoefficient. given: the file has it.",
      ),
    defaults.et0Method,
  ),
  panCoefficient: between(
    0.35,
    1.1,
    "Kp, ET0 over the evaporation of the pan; required with the method pan.",
  ).optional(),
};
