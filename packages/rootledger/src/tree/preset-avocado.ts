import { type CropPreset, disputed, sourced } from "./crop-preset.js";

const fao12 = "FAO-56 (Allen et al. 1998) table 12, avocado, no ground cover";
const fao17 = "FAO-56 (Allen et al. 1998) table 17, avocado, no ground cover";
const fao22 = "FAO-56 (Allen et al. 1998) table 22, avocado";
const coast = sourced(0.64, "Grismer, Snyder & Faber (2000), California Agriculture 54(3):25, foggy coast", "seen");
const newZealand = sourced(
  0.62,
  "New Zealand sap-flow study 2016-19, middle of summer, 0.50-0.85 by fruit load",
  "seen",
);
const mexico = sourced(0.75, "water-balance preprint, Michoacan (2024): year 0.72-0.78", "seen");

/** Avocado, mature trees of Hass type on bare ground. */
export const avocado: CropPreset = {
  name: "avocado",
  kc: {
    initial: disputed(0.6, fao12, "seen", [coast]),
    middle: disputed(0.85, fao12, "seen", [coast, newZealand, mexico]),
    end: disputed(0.75, fao12, "seen", [coast, mexico]),
  },
  kcb: {
    initial: disputed(0.5, fao17, "seen"),
    middle: disputed(0.8, fao17, "seen"),
    end: disputed(0.7, fao17, "seen"),
  },
  otherKc: [
    {
      hemisphere: "south",
      kcFromJanuary: [0.7, 0.7, 0.7, 0.6, 0.6, 0.6, 0.5, 0.6, 0.6, 0.6, 0.7, 0.7],
      source: "CNR / INIA Chile, irrigation card Hass, Valparaiso region",
      verified: "seen",
    },
  ],
  heightM: disputed(3, fao12, "seen"),
  rootDepthCm: disputed(60, "our choice: deep enough for the 10-20 % of roots below 20-25 cm", "choice", [
    sourced(50, `${fao22}: 50-100 cm`, "seen"),
    sourced(15, "Newett, Queensland; Agriculture Victoria: 90 % of feeder roots in the top 15 cm", "seen"),
    sourced(40, "Ferreyra, Selles & Gil (2010), CAS Yearbook 93: 70-90 % in 40 cm", "seen"),
    sourced(50, "Salgado & Toro (1995), III World Avocado Congress: heavy soil, most at 25-50 cm", "seen"),
  ]),
  topShare: disputed(0.85, "Bender, UC Cooperative Extension: 80-90 % in the top 20-25 cm", "seen", [
    sourced(0.66, "Michoacan (2024): 66-73 % of ET from the top 30 cm", "seen"),
    sourced(0.8, "Western Australia agriculture department: up to 80 % of water from the top 30 cm", "seen"),
  ]),
  depletionFraction: disputed(0.3, "Bender, UC Cooperative Extension: coarse soil", "seen", [
    sourced(0.7, `${fao22}; in fine soil that is about 200 kPa, far beyond what the tree draws`, "seen"),
    sourced(0.5, "Bender, UC Cooperative Extension: clay", "seen"),
  ]),
  pullLimitKPa: disputed(20, "Newett, Queensland; Agriculture Victoria: draws little beyond 20 kPa", "seen", [
    sourced(40, "Marsh & Gustafson (1969), CAS Yearbook 53: watered at about 40 kPa", "seen"),
    sourced(50, "Taylor & Ashcroft (1972): 500 cm, a trigger for best yield", "memory"),
  ]),
  zeroUptakeKPa: disputed(100, "our choice: no curve has been measured for avocado", "choice"),
  airLimitFraction: disputed(0.1, "Wesseling & van Wijk (1957)", "memory", [
    sourced(0.17, "Ferreyra et al. (2007), VI World Avocado Congress: stomata respond below 17 % soil air", "seen"),
    sourced(0.3, "growers' rule, second hand", "seen"),
  ]),
  airReturnKPa: disputed(5, "soil oxygen under avocado in a clay of Israel: back at about 50 mbar", "seen"),
  phenologyNorth: {
    rest: "12-01",
    bloom: "03-15",
    growth: "03-01",
    fruitSet: "05-01",
    full: "06-01",
    decline: "10-01",
  },
  phenologySource:
    "our choice for Hass in a Mediterranean climate: bloom of late winter and spring; move the days to what is seen",
  sensitive: ["bloom", "fruitSet"],
  canopy: [
    { ageYears: 0, diameterM: 0.6 },
    { ageYears: 1, diameterM: 1.2 },
    { ageYears: 2, diameterM: 2 },
    { ageYears: 3, diameterM: 2.8 },
    { ageYears: 5, diameterM: 4.2 },
    { ageYears: 8, diameterM: 5.5 },
  ],
  canopySource: "our choice: no published table of canopy by age was found; measure by tape",
  cautions: [
    "FAO-56's Kc middle is above what was measured on coasts; a measured winter ratio to ET0 can exceed 1.5 in cloud (New Zealand).",
    "No uptake curve has been measured for avocado; root rot and temperature shift the air limits.",
  ],
};
