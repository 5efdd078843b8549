import type { Codec } from "./codec.js";
import type { Reading } from "./scene.js";

const mostReadings = 60;

/** Readings as `hour-depth-kPa`, joined by `~`. */
export function readingsWithin(
  hours: number,
  deepestCm: number,
  [least, most]: readonly [number, number],
): Codec<readonly Reading[]> {
  const one = (text: string): Reading | undefined => {
    const parts = /^(\d{1,6})-(\d{1,3})-(\d{1,3}(?:\.\d{1,2})?)$/.exec(text);
    if (parts === null) return undefined;
    const [hour, depthCm, kPa] = parts.slice(1).map(Number) as [number, number, number];
    return hour < hours && depthCm < deepestCm && kPa >= least && kPa <= most ? { hour, depthCm, kPa } : undefined;
  };
  return {
    rule: `up to ${mostReadings} readings as hour-depth-kPa with ~ between them`,
    read: (text) => {
      if (text === "") return [];
      const all = text.split("~").map(one);
      const good = all.filter((reading) => reading !== undefined);
      return good.length === all.length && good.length <= mostReadings ? good : undefined;
    },
    write: (readings) =>
      readings.map(({ hour, depthCm, kPa }) => `${hour}-${depthCm}-${Number(kPa.toFixed(2))}`).join("~"),
  };
}
