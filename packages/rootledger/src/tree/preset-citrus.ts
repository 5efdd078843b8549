import { type CropPreset, disputed, sourced } from "./crop-preset.js";

const fao12 = "FAO-56 (Allen et al. 1998) table 12, citrus, no ground cover, 70 % canopy";
const fao17 = "FAO-56 (Allen et al. 1998) table 17, citrus, no ground cover, 70 % canopy";
const fao22 = "FAO-56 (Allen et al. 1998) table 22, citrus, 70 % canopy";
const lemon = sourced(
  0.52,
  "Grismer, Snyder & Faber (2000), California Agriculture 54(3):25, lemon on a foggy coast",
  "seen",
);
const youngLemon = sourced(0.46, "Grismer, Snyder & Faber (2000), young lemon", "seen");
const california = sourced(0.55, "California Department of Water Resources: orange tree in July", "seen");
const florida = sourced(1, "Morgan et al. (2006), Florida: 0.7 in winter to 1.1 in summer", "memory");

/** Citrus, orange type, mature, 70 % of the ground under canopy, bare ground. */
export const citrus: CropPreset = {
  name: "citrus",
  kc: {
    initial: disputed(0.7, fao12, "seen", [lemon]),
    middle: disputed(0.65, fao12, "seen", [lemon, youngLemon, california, florida]),
    end: disputed(0.7, fao12, "seen", [lemon]),
  },
  kcb: {
    initial: disputed(0.65, fao17, "seen"),
    middle: disputed(0.6, fao17, "seen"),
    end: disputed(0.65, fao17, "seen"),
  },
  otherKc: [],
  heightM: disputed(4, fao12, "seen"),
  rootDepthCm: disputed(40, "Western Australia agriculture department: effective depth 30-40 cm", "seen", [
    sourced(120, `${fao22}: 120-150 cm`, "seen"),
  ]),
  topShare: disputed(0.6, "our choice: most fine roots in the top 30-40 cm", "choice"),
  depletionFraction: disputed(0.5, fao22, "seen", [
    sourced(0.29, "UF/IFAS, sand, February to June: 25-33 %", "seen"),
    sourced(0.58, "UF/IFAS, sand, rainy season: 50-66 %", "seen"),
  ]),
  pullLimitKPa: disputed(40, "Taylor & Ashcroft (1972), lemon: 400 cm, a trigger for best yield", "memory", [
    sourced(100, "South Africa, a practical approach (2020): readily available 10-100 kPa", "seen"),
    sourced(60, "Taylor & Ashcroft (1972), orange: 200-1000 cm", "memory"),
  ]),
  zeroUptakeKPa: disputed(500, "our choice: no curve was found", "choice"),
  airLimitFraction: disputed(0.1, "Wesseling & van Wijk (1957)", "memory"),
  airReturnKPa: disputed(5, "our choice: as for avocado; no published value for citrus", "choice"),
  phenologyNorth: {
    rest: "01-01",
    growth: "03-02",
    bloom: "03-20",
    fruitSet: "05-01",
    full: "05-31",
    decline: "09-28",
  },
  phenologySource:
    "stage lengths 60, 90, 120, 95 days from January: FAO-56 table 11, Mediterranean (seen); bloom and set: our choice",
  sensitive: ["bloom", "fruitSet"],
  canopy: [
    { ageYears: 0, diameterM: 0.5 },
    { ageYears: 1, diameterM: 0.9 },
    { ageYears: 3, diameterM: 2 },
    { ageYears: 6, diameterM: 3.4 },
    { ageYears: 10, diameterM: 4.5 },
  ],
  canopySource: "our choice: no published table of canopy by age was found; measure by tape",
  cautions: [
    "A factor of 0.7 on pan evaporation (Western Australia) is not a Kc: it goes with the pan and the canopy ground.",
    "Tolerates flooding for days, less the warmer it is (UF/IFAS: injury from 3 days at 30-35 C).",
  ],
};
