import { usualInjection } from "../lines/fertigation.js";
import { maasHoffmanSource, type maasHoffmanTable } from "../tree/salinity-table.js";
import type { Default } from "./defaults.js";
import type { Salt } from "./scenario.js";

/** ECe of ground in balance with its water over ECw. */
const eceOverEcw = 1.5;
const timesSource = "Zekri et al. (2018), UF/IFAS; UF/IFAS Circular 1410";

/** What `block.salt`, `block.nitrogen` and `programme.nitrogen` may leave out. Salt and nitrogen are off unless the file has them. */
export const solutesDefaults: {
  readonly crop: Default<keyof typeof maasHoffmanTable & string>;
  readonly response: Default<Salt["response"]["kind"]>;
  readonly waterMgPerL: Default<number>;
  readonly startKgPerHa: Default<number>;
  readonly afterMinutes: Default<number>;
  readonly injectMinutes: Default<number>;
  readonly ground: Default<"under-canopy">;
} = {
  crop: {
    value: "avocado",
    source: `${maasHoffmanSource}; from memory`,
    published: "ECe 1.3 dS/m; about 0.6 in a field trial",
  },
  response: {
    value: "threshold-slope",
    source: "Maas & Hoffman (1977), each cell by its own ECe",
    published: "threshold-slope or osmotic head",
  },
  waterMgPerL: { value: 0, source: "no nitrate in the water unless the file says so", published: "none" },
  startKgPerHa: { value: 0, source: "no nitrate in the soil unless the file says so", published: "none" },
  afterMinutes: { value: usualInjection.travelMinutes, source: timesSource, published: "20-30 min" },
  injectMinutes: { value: usualInjection.injectMinutes, source: timesSource, published: "at least 30-45 min" },
  ground: { value: "under-canopy", source: "our choice; common practice, no source", published: "none" },
};

/** ECe at the start. @example startEceDefault(1).value // 1.5 */
export const startEceDefault = (waterEcDsPerM: number): Default<number> => ({
  value: eceOverEcw * waterEcDsPerM,
  source: "Ayers & Westcot (1985), FAO-29 Rev. 1: ECe 1.5 ECw in the long run where 15-20 % is leached",
  published: "ECe/ECw 1.2-2.7 for leaching fractions 0.30-0.05 (FAO-29 table 3)",
});
