import { requirePositive } from "../numeric/require-positive.js";
import { flowEffect, type PondShare } from "./flow-effect.js";
import { stripPondHalfWidthCm } from "./strip-pond.js";
import { type WettingRelation, type WettingRun, wettingRelations } from "./wetted-bodies.js";

export interface WettingInput extends Omit<WettingRun, "frontThetaRise"> {
  /** Rise at which soil counts as wetted, m3/m3; 0.02 when absent, the usual line in simulated wetting fronts (our choice). */
  readonly frontThetaRise?: number;
  /** Distance between emitters on the line; when given, the result also says which bodies meet their neighbours. */
  readonly emitterSpacingCm?: number;
}

/** What one relation says about the run. */
export interface WettedBody {
  readonly relation: WettingRelation;
  readonly source: string;
  readonly widthCm: number;
  readonly depthCm: number;
  /** The same volume at twice the emitter flow. */
  readonly widthAtDoubleFlowCm: number;
  readonly depthAtDoubleFlowCm: number;
  /** Mean rise of theta if the body were half an ellipsoid of this size; above the pore space free it cannot hold the water. */
  readonly thetaRiseOfHalfEllipsoid: number;
}

export interface RelationSpread {
  readonly min: number;
  readonly max: number;
  /** max / min */
  readonly ratio: number;
}

export interface WettingEstimate {
  readonly bodies: readonly WettedBody[];
  readonly widthCm: RelationSpread;
  readonly depthCm: RelationSpread;
  readonly pond: PondShare;
  readonly line?: {
    /** Half width of the pond if the emitters' flow were spread along the line. */
    readonly pondHalfWidthCm: number;
    readonly meetingNeighbours: readonly WettingRelation[];
  };
}

/**
 * Wetted width and depth at the end of one run of one surface emitter by every relation, side by side, with how far they
 * disagree and whether the pond decides what more flow does (`flowEffect`). Uniform, flat ground without uptake; nothing of
 * what happens after the valve closes. Sources: at each relation.
 * @throws RangeError when a number is not above 0 (thetaInitial: below 0), or a rise exceeds the free pore space.
 * @example estimateWetting({ emitterFlowCm3PerH: 4000, volumeCm3: 12000, kSatCmPerH: 2, alphaPerCm: 0.05, thetaInitial: 0.1, thetaSaturated: 0.4, meanThetaRise: 0.2 }).widthCm.ratio
 */
export function estimateWetting(input: WettingInput): WettingEstimate {
  const run: WettingRun = { frontThetaRise: 0.02, ...input };
  requireRun(run);
  const faster: WettingRun = { ...run, emitterFlowCm3PerH: 2 * run.emitterFlowCm3PerH };
  const bodies = (Object.keys(wettingRelations) as WettingRelation[]).map((relation): WettedBody => {
    const { source, sizeOf } = wettingRelations[relation];
    const { widthCm, depthCm } = sizeOf(run);
    const atDoubleFlow = sizeOf(faster);
    return {
      relation,
      source,
      widthCm,
      depthCm,
      widthAtDoubleFlowCm: atDoubleFlow.widthCm,
      depthAtDoubleFlowCm: atDoubleFlow.depthCm,
      thetaRiseOfHalfEllipsoid: (6 * run.volumeCm3) / (Math.PI * widthCm * widthCm * depthCm),
    };
  });
  return {
    bodies,
    widthCm: spreadOf(bodies.map((body) => body.widthCm)),
    depthCm: spreadOf(bodies.map((body) => body.depthCm)),
    pond: flowEffect(run, run.thetaSaturated - run.thetaInitial),
    ...(input.emitterSpacingCm === undefined ? {} : { line: alongTheLine(run, bodies, input.emitterSpacingCm) }),
  };
}

function alongTheLine(
  run: WettingRun,
  bodies: readonly WettedBody[],
  emitterSpacingCm: number,
): NonNullable<WettingEstimate["line"]> {
  requirePositive("estimateWetting", { emitterSpacingCm });
  return {
    pondHalfWidthCm: stripPondHalfWidthCm(run.emitterFlowCm3PerH / emitterSpacingCm, run),
    meetingNeighbours: bodies.filter((body) => body.widthCm >= emitterSpacingCm).map((body) => body.relation),
  };
}

function spreadOf(values: readonly number[]): RelationSpread {
  const min = Math.min(...values);
  const max = Math.max(...values);
  return { min, max, ratio: max / min };
}

function requireRun(run: WettingRun): void {
  const { emitterFlowCm3PerH, volumeCm3, kSatCmPerH, alphaPerCm, thetaInitial, thetaSaturated } = run;
  requirePositive("estimateWetting", { emitterFlowCm3PerH, volumeCm3, kSatCmPerH, alphaPerCm, thetaSaturated });
  if (!(thetaInitial >= 0 && thetaInitial < thetaSaturated && thetaSaturated < 1)) {
    throw new RangeError(
      `estimateWetting requires 0 <= thetaInitial < thetaSaturated < 1: got ${thetaInitial} and ${thetaSaturated}`,
    );
  }
  for (const name of ["meanThetaRise", "frontThetaRise"] as const) {
    const rise = run[name];
    if (!(rise > 0 && rise <= thetaSaturated - thetaInitial)) {
      throw new RangeError(
        `estimateWetting requires ${name} above 0 and at most the free pore space: got ${rise} of ${thetaSaturated - thetaInitial}`,
      );
    }
  }
}
