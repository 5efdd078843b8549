import { type CropPreset, disputed, sourced } from "./crop-preset.js";

const fao12 = "FAO-56 (Allen et al. 1998) table 12, strawberries";
const fao17 = "FAO-56 (Allen et al. 1998) table 17, strawberries";
const letourneau = "Letourneau et al. (2015), Agricultural Water Management 161";

/** Strawberry on beds. Under plastic mulch see the plastic rules; FAO-56's values are for bare beds. */
export const strawberry: CropPreset = {
  name: "strawberry",
  kc: {
    initial: disputed(0.4, fao12, "seen"),
    middle: disputed(0.85, fao12, "seen", [
      sourced(0.75, "Hanson & Bendixen (2004), California Agriculture 58(1):48: canopy never above 75 %", "seen"),
    ]),
    end: disputed(0.75, fao12, "seen"),
  },
  kcb: {
    initial: disputed(0.3, fao17, "seen"),
    middle: disputed(0.8, fao17, "seen"),
    end: disputed(0.7, fao17, "seen"),
  },
  otherKc: [],
  heightM: disputed(0.2, fao12, "seen"),
  rootDepthCm: disputed(25, "INIA Coquimbo (2000): 20-30 cm", "seen", [
    sourced(20, "FAO-56 table 22, strawberries: 20-30 cm", "seen"),
  ]),
  topShare: disputed(0.9, "our choice: roots end at 20-30 cm", "choice"),
  depletionFraction: disputed(0.2, "FAO-56 table 22, strawberries", "seen"),
  pullLimitKPa: disputed(10, `${letourneau}: trigger 10-15 kPa in clay loam`, "seen", [
    sourced(8, `${letourneau}: sandy loam`, "seen"),
    sourced(15, `${letourneau}: silty clay loam`, "seen"),
    sourced(20, "Spinelli et al. (2018): keep below 20 kPa", "seen"),
    sourced(25, "Taylor & Ashcroft (1972): 200-300 cm", "memory"),
  ]),
  zeroUptakeKPa: disputed(100, "our choice: no curve was found", "choice"),
  airLimitFraction: disputed(0.1, "Wesseling & van Wijk (1957)", "memory"),
  airReturnKPa: disputed(5, "our choice: as for avocado; no published value", "choice"),
  phenologyNorth: {
    rest: "11-01",
    growth: "01-15",
    bloom: "02-15",
    fruitSet: "03-01",
    full: "04-15",
    decline: "08-01",
  },
  phenologySource: "our choice for autumn planting on the coast of California",
  sensitive: ["bloom", "fruitSet"],
  canopy: [
    { ageYears: 0, diameterM: 0.1 },
    { ageYears: 0.5, diameterM: 0.3 },
  ],
  canopySource: "our choice: one season; no published table was found",
  cautions: [
    "Season ETc in Santa Maria, California: 310-396 mm (Hanson & Bendixen 2004).",
    "Soil evaporation beside drip-irrigated beds was 25-35 % of ET0 (Clark et al. 1996).",
  ],
};
