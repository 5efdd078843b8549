import type { DemoFile } from "./demo.js";
import { type OwnWeather, ownWeatherFile } from "./own-weather.js";

/** Longest season that the page draws, days. */
const mostDays = 400;

/** The demo under another weather: its season is that of the record, and the tree's dates come every year. */
export function fileUnder(demo: DemoFile, weather: OwnWeather | undefined): DemoFile {
  if (weather === undefined) return demo;
  const { name, latitudeDeg, elevationM, et0Method, startDate, days } = weather;
  return {
    ...demo,
    season: { startDate, days: Math.min(days, mostDays) },
    weather: { name, file: ownWeatherFile, latitudeDeg, elevationM, et0Method },
    block: {
      ...demo.block,
      tree: { ...demo.block.tree, kcb: everyYear(demo.block.tree.kcb, startDate, latitudeDeg < 0) },
    },
  };
}

type Kcb = DemoFile["block"]["tree"]["kcb"];

/** The demo's dates repeated over the years of a record; half a year later on the other half of the earth, for the demo lies in the south. */
function everyYear(kcb: Kcb, startDate: string, south: boolean): Kcb {
  const first = Number(startDate.slice(0, 4)) - 1;
  const dates = [0, 1, 2, 3].flatMap((year) =>
    kcb.map(({ date, kcb: value }) => {
      const at = new Date(`${date}T00:00:00Z`);
      at.setUTCFullYear(first + year, at.getUTCMonth() + (south ? 0 : 6));
      return { date: at.toISOString().slice(0, 10), kcb: value };
    }),
  );
  const sorted = dates.sort((a, b) => (a.date < b.date ? -1 : 1));
  return sorted.filter(({ date }, i) => i === 0 || date !== sorted[i - 1]!.date);
}
