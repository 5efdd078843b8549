import type { WeatherSite } from "rootledger/weather";

/** A station of the U.S. Climate Reference Network: weather and soil moisture of one plot of rain-fed grass. */
export interface Station {
  readonly name: string;
  /** Name of the record in data/soil-moisture. */
  readonly record: string;
  /** Name of the record in data/weather. */
  readonly weather: string;
  readonly site: WeatherSite;
}

/** No wind is measured, so dailyEt0 takes 2 m/s; elevations are known to about 30 m (data/weather/PROVENANCE.md). */
const at = (latitudeDeg: number, elevationM: number): WeatherSite => ({ latitudeDeg, elevationM, windHeightM: 2 });

export const stations: readonly Station[] = [
  { name: "Goodwell, Oklahoma", record: "goodwell-2020", weather: "goodwell-2020", site: at(36.57, 998) },
  {
    name: "Bowling Green, Kentucky",
    record: "bowling-green-2020",
    weather: "bowling-green-2020",
    site: at(37.25, 243),
  },
  { name: "Merced, California", record: "merced-2020", weather: "merced-2020", site: at(37.24, 24) },
  { name: "Newton, Georgia", record: "newton-2020", weather: "newton-2020", site: at(31.19, 54) },
  { name: "Sebring, Florida", record: "sebring-2020", weather: "sebring-2020", site: at(27.15, 46) },
  { name: "Las Cruces, New Mexico", record: "las-cruces-2020", weather: "las-cruces-2020", site: at(32.61, 1319) },
  { name: "Manhattan, Kansas", record: "manhattan-2010-2015", weather: "manhattan-2003-2017", site: at(39.1, 348) },
];
