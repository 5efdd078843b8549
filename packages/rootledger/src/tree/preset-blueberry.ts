import { type CropPreset, disputed, sourced } from "./crop-preset.js";

const fao12 = "FAO-56 (Allen et al. 1998) table 12, berries (bushes)";
const fao17 = "FAO-56 (Allen et al. 1998) table 17, berries (bushes)";
const oregon = "weighing lysimeters, western Oregon, drip on sawdust (ASHS 2025)";
const firstYear = sourced(0.41, `${oregon}: first year, 0.11 in June to 0.41 in September`, "seen");
const secondYear = sourced(0.61, `${oregon}: second year, 0.31 in May to 0.61 in September`, "seen");
const lowbush = sourced(0.66, "Hunt et al. (2009), lowbush, Maine: July ET over ET0 0.61-0.71", "seen");

/** Highbush blueberry, mature bushes in rows. FAO-56 has no row of its own for it; its bush berries stand in. */
export const blueberry: CropPreset = {
  name: "blueberry",
  kc: {
    initial: disputed(0.3, fao12, "memory", [firstYear]),
    middle: disputed(1.05, fao12, "memory", [secondYear, lowbush]),
    end: disputed(0.5, fao12, "memory", [secondYear]),
  },
  kcb: {
    initial: disputed(0.2, fao17, "memory"),
    middle: disputed(1, fao17, "memory"),
    end: disputed(0.4, fao17, "memory"),
  },
  otherKc: [],
  heightM: disputed(1.5, fao12, "memory"),
  rootDepthCm: disputed(45, "Northwest berry network: about 45 cm", "seen", [
    sourced(60, "FAO-56 table 22, berries (bushes): 60-120 cm", "seen"),
  ]),
  topShare: disputed(0.8, "our choice: a shallow mat without root hairs", "choice"),
  depletionFraction: disputed(0.5, "FAO-56 table 22, berries (bushes)", "seen"),
  pullLimitKPa: disputed(20, "our choice: no published trigger in kPa was found", "choice"),
  zeroUptakeKPa: disputed(100, "our choice: no curve was found", "choice"),
  airLimitFraction: disputed(0.1, "Wesseling & van Wijk (1957)", "memory"),
  airReturnKPa: disputed(5, "our choice: as for avocado; no published value", "choice"),
  phenologyNorth: {
    rest: "11-01",
    growth: "03-15",
    bloom: "04-15",
    fruitSet: "05-15",
    full: "06-01",
    decline: "09-01",
  },
  phenologySource:
    "our choice for northern highbush in a temperate climate; southern highbush is weeks to months earlier",
  sensitive: ["fruitSet", "full"],
  canopy: [
    { ageYears: 0, diameterM: 0.3 },
    { ageYears: 2, diameterM: 0.6 },
    { ageYears: 6, diameterM: 1.2 },
  ],
  canopySource: "our choice: no published table of canopy by age was found; measure by tape",
  cautions: [
    "Water use of mature southern highbush in Florida: 1.6 L/plant/day in January to 8.2 in August (ASHS 2013).",
    "On pine bark water is held poorly: 12 % by volume new, 21 % aged (Smith, Krewer & Ruter 2012, second hand).",
  ],
};
