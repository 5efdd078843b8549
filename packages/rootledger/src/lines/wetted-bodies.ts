import { falsePosition } from "../numeric/false-position.js";
import { aminEkhmaj } from "./amin-ekhmaj.js";
import type { ExponentialSoil } from "./exponential-soil.js";
import { transientPointSource } from "./point-source.js";
import { type EmitterRun, schwartzmanZur, type WettedSize } from "./schwartzman-zur.js";
import { surfaceFront } from "./travel-time.js";

/** One run of one emitter and the soil it falls on. */
export interface WettingRun extends EmitterRun, ExponentialSoil {
  readonly thetaInitial: number;
  readonly thetaSaturated: number;
  /** Mean rise of the water content in the wetted body, m3/m3; Amin & Ekhmaj (2006) take half of saturation. */
  readonly meanThetaRise: number;
  /** Rise at which soil counts as wetted, m3/m3; used by the transient source only. */
  readonly frontThetaRise: number;
  /** dK/dtheta of the transient source's soil, cm/h. */
  readonly conductivityPerThetaCmPerH: number;
}

/** Name of a published relation of wetting. */
export type WettingRelation = "schwartzman-zur" | "amin-ekhmaj" | "philip-travel-time" | "warrick-transient";

/** Published relations of wetting, each with its source. */
export const wettingRelations: Readonly<
  Record<
    WettingRelation,
    {
      readonly source: string;
      /** Size of the wetted ground after a run. */
      readonly sizeOf: (run: WettingRun) => WettedSize;
    }
  >
> = {
  "schwartzman-zur": {
    source: "Schwartzman & Zur (1986), J. Irrig. Drain. Eng. 112:242-253",
    sizeOf: schwartzmanZur,
  },
  "amin-ekhmaj": {
    source: "Amin & Ekhmaj (2006), 7th Int. Micro Irrigation Congress 1:503-513",
    sizeOf: (run) => aminEkhmaj(run, run.meanThetaRise),
  },
  "philip-travel-time": {
    source: "Philip (1984), Water Resour. Res. 20:990-994",
    sizeOf: (run) => {
      const front = surfaceFront({ ...run, thetaRise: run.meanThetaRise });
      return { widthCm: 2 * front.radiusCm, depthCm: front.depthCm };
    },
  },
  "warrick-transient": {
    source: "Warrick (1974), Soil Sci. Soc. Am. Proc. 38:383-386",
    sizeOf: transientFront,
  },
};

/** Where the linear transient solution has risen by the front's rise. */
function transientFront(run: WettingRun): WettedSize {
  const { alphaPerCm, emitterFlowCm3PerH, conductivityPerThetaCmPerH: slopeCmPerH } = run;
  const half = alphaPerCm / 2;
  const time = (half * slopeCmPerH * run.volumeCm3) / emitterFlowCm3PerH / 2;
  const level = (8 * Math.PI * run.frontThetaRise * slopeCmPerH) / (alphaPerCm * alphaPerCm * emitterFlowCm3PerH);
  const reach = (at: (distance: number) => number): number => {
    const over = (distance: number): number => Math.log(at(distance) / level);
    let far = Math.sqrt(time);
    let near = far;
    while (over(far) > 0) far *= 2;
    while (over(near) <= 0) near /= 2;
    return falsePosition(over, near, far, 1e-9) / half;
  };
  return {
    widthCm: 2 * reach((distance) => transientPointSource("surface", distance, 0, time)),
    depthCm: reach((distance) => transientPointSource("surface", 0, distance, time)),
  };
}
