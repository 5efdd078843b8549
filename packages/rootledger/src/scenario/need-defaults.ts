import { rainThatCountsMm } from "../water/effective-rain.js";
import type { Default } from "./defaults.js";

/** What a need file may leave out. */
export const needDefaults: {
  readonly hotDayRatio: Default<number>;
  readonly efficiencyFraction: Default<number>;
  readonly leachingFraction: Default<number>;
  readonly countsAboveMm: Default<number>;
  readonly coverWithCanopy: Default<"canopy-ground">;
  readonly coverWithoutCanopy: Default<"whole-ground">;
} = {
  hotDayRatio: {
    value: 1.3,
    source:
      "our choice: ET0 that nine days of ten of a summer month stay below, over its mean: Malaga 1.27-1.33, Boonah 1.20-1.25, Augsburg 1.37-1.43",
    published: "none",
  },
  efficiencyFraction: {
    value: 0.9,
    source:
      "Brouwer, Prins & Heibloem (1989), FAO Training Manual 4: field application efficiency of drip, from memory",
    published: "0.80-0.91 implied by an irrigation card of INIA Chile",
  },
  leachingFraction: { value: 0, source: "none unless the file says so", published: "see FAO-29" },
  countsAboveMm: {
    value: rainThatCountsMm,
    source: "Western Australia agriculture department, citrus irrigation recommendations: count events above 5 mm",
    published: "about a quarter inch, UC Cooperative Extension (2016)",
  },
  coverWithCanopy: {
    value: "canopy-ground",
    source: "Western Australia agriculture department, citrus irrigation recommendations: depth times canopy ground",
    published: "FAO-36 lists three other rules",
  },
  coverWithoutCanopy: {
    value: "whole-ground",
    source: "FAO-56 (Allen et al. 1998): Kc of a mature orchard is of the whole ground",
    published: "none",
  },
};
