import {
  airLimits,
  gasDiffusivityRatio,
  oxygenDepth,
  oxygenInAirGPerM3,
  oxygenReach,
  q10Factor,
  sumOfExcessWaterCmDay,
} from "rootledger/water";
import type { Evaluators } from "./evaluators.js";

const secondsPerDay = 86400;

/** Diffusion of oxygen into the soil and how deep it comes. */
export const oxygen: Evaluators = {
  "gas-diffusivity": (given) => {
    const of = (law: "millington-quirk" | "moldrup") =>
      gasDiffusivityRatio(law, given.number("airFilled"), given.number("porosity"));
    return { millingtonQuirk: of("millington-quirk"), moldrup: of("moldrup") };
  },
  "oxygen-reach": (given) => ({ depthOverDecay: oxygenReach(given.number("g")) }),
  "oxygen-depth": (given) => {
    const decay = given.number("decayM");
    const ratio = gasDiffusivityRatio("millington-quirk", given.number("airFilled"), given.number("porosity"));
    const depthM = oxygenDepth({
      diffusivity: ratio * given.number("diffusivityInAirM2PerS") * secondsPerDay,
      surface: oxygenInAirGPerM3(given.number("temperatureC")),
      demand: given.number("demandGPerM2Day") / decay,
      decay,
    });
    return { depthM: Number.isFinite(depthM) ? depthM : "oxygen throughout" };
  },
  q10: (given) => {
    const reference = given.numbers("referenceC");
    return {
      factor: given
        .numbers("temperatureC")
        .map((celsius, i) => q10Factor(given.number("q10"), celsius, reference[i] ?? Number.NaN)),
    };
  },
  sew30: (given) => ({ sumCmDay: sumOfExcessWaterCmDay(given.numbers("waterTableDepthCm")) }),
  "air-limits": (given) => ({ figures: given.texts("names").flatMap((name) => airLimits[name]?.figures ?? []) }),
};
