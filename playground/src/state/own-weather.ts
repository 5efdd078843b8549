/** Days of weather that a person brought along, as they are kept on the device. */
export interface OwnWeather {
  readonly name: string;
  /** Daily record in the library's own format. */
  readonly text: string;
  readonly latitudeDeg: number;
  readonly elevationM: number;
  readonly et0Method: "penman-monteith" | "given";
  readonly startDate: string;
  readonly days: number;
}

/** The name under which the file of a comparison asks for it. */
export const ownWeatherFile = "own-weather.csv";

const key = "rootledger.weather";

/** Names a record in a link: name, first day and days. @example weatherMark(weather) // "farm.csv 2024-07-01 20 d" */
export const weatherMark = ({ name, startDate, days }: OwnWeather): string =>
  `${name.slice(0, 20)} ${startDate} ${days} d`;

/** The record kept on this device; undefined where there is none or storage is forbidden. */
export function keptWeather(): OwnWeather | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "null");
    return isWeather(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a record, or forgets it. Returns why it could not be kept. */
export function keepWeather(weather: OwnWeather | undefined): "full" | undefined {
  try {
    if (weather === undefined) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(weather));
    return undefined;
  } catch {
    return "full";
  }
}

function isWeather(value: unknown): value is OwnWeather {
  if (typeof value !== "object" || value === null) return false;
  const has = (name: string, type: string): boolean => typeof Reflect.get(value, name) === type;
  return (
    ["name", "text", "et0Method", "startDate"].every((name) => has(name, "string")) &&
    ["latitudeDeg", "elevationM", "days"].every((name) => has(name, "number"))
  );
}
