import {
  type GreenAmptSoil,
  greenAmptPonded,
  greenAmptPondingDepthCm,
  greenAmptPondingTimeH,
  greenAmptUnderRain,
} from "rootledger/ground";
import {
  aminEkhmaj,
  scaledTimeDown,
  scaledTimeSideways,
  schwartzmanZur,
  steadyPointSource,
  surfaceFront,
  transientPointSource,
  woodingPondRadiusCm,
} from "rootledger/lines";
import type { Evaluators } from "./evaluators.js";
import type { Given } from "./given.js";

const greenAmptSoil = (given: Given): GreenAmptSoil => ({
  conductivityCmPerH: given.number("conductivityCmPerH"),
  frontSuctionCm: given.number("frontSuctionCm"),
  thetaDeficit: (1 - given.number("effectiveSaturation")) * given.number("effectivePorosity"),
});

/** Wetting under emitters, and infiltration. */
export const wetting: Evaluators = {
  "schwartzman-zur": (given) => {
    const { widthCm, depthCm } = schwartzmanZur({
      emitterFlowCm3PerH: 1000 * given.number("emitterFlowLPerH"),
      volumeCm3: 1000 * given.number("volumeL"),
      kSatCmPerH: given.number("kSatMmPerH") / 10,
    });
    return { widthM: widthCm / 100, depthM: depthCm / 100 };
  },
  "amin-ekhmaj": (given) => {
    const run = {
      emitterFlowCm3PerH: given.number("emitterFlowCm3PerH"),
      volumeCm3: given.number("volumeCm3"),
      kSatCmPerH: given.number("kSatCmPerH"),
    };
    const { widthCm, depthCm } = aminEkhmaj(run, given.number("thetaRise"));
    return { radiusCm: widthCm / 2, depthCm };
  },
  "wooding-disc": (given) => ({
    radiusCm: woodingPondRadiusCm(given.number("emitterFlowCm3PerH"), {
      kSatCmPerH: given.number("kSatCmPerH"),
      alphaPerCm: given.number("alphaPerCm"),
    }),
  }),
  "philip-travel-time": (given) => ({
    sideways: scaledTimeSideways(given.number("scaledDistance")),
    down: scaledTimeDown(given.number("scaledDistance")),
  }),
  "philip-front": (given) => {
    const { radiusCm, depthCm } = surfaceFront({
      alphaPerCm: given.number("alphaPerCm"),
      thetaRise: given.number("thetaRise"),
      volumeCm3: given.number("volumeCm3"),
    });
    return { radiusCm, depthCm };
  },
  "steady-surface-source": (given) => ({
    potential: steadyPointSource("surface", given.number("radius"), given.number("depth")),
  }),
  "transient-surface-source": (given) => ({
    potential: transientPointSource("surface", given.number("radius"), given.number("depth"), given.number("time")),
  }),
  "pulse-mean": (given) => ({
    steadyPotential: steadyPointSource("surface", given.number("radius"), given.number("depth")),
  }),
  "green-ampt-ponded": (given) => ({ ...greenAmptPonded(greenAmptSoil(given), given.number("hours")) }),
  "green-ampt-ponding": (given) => ({
    pondingTimeH: greenAmptPondingTimeH(greenAmptSoil(given), given.number("rainCmPerH")),
    depthCm: greenAmptPondingDepthCm(greenAmptSoil(given), given.number("rainCmPerH")),
  }),
  "green-ampt-rain": (given) => ({
    ...greenAmptUnderRain(greenAmptSoil(given), given.number("rainCmPerH"), given.number("hours")),
  }),
};
