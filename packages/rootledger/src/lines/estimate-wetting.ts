import { requirePositive } from "../numeric/require-positive.js";
import { flowEffect, type PondShare } from "./flow-effect.js";
import { stripPondHalfWidthCm } from "./strip-pond.js";
import { type WettingRelation, type WettingRun, wettingRelations } from "./wetted-bodies.js";

/** What published relations of wetting ask for. */
export interface WettingInput extends Omit<WettingRun, "frontThetaRise" | "conductivityPerThetaCmPerH"> {
  /** Rise at which soil counts as wetted, m3/m3; 0.02 when absent, the usual line in simulated wetting fronts (our choice). */
  readonly frontThetaRise?: number;
  /** kSat over the free pore space when absent: one straight line from the start to saturation. */
  readonly conductivityPerThetaCmPerH?: number;
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
  /** Mean rise of theta, m3/m3, if the body were half an ellipsoid of this size. */
  readonly thetaRiseOfHalfEllipsoid: number;
  /** Whether that rise finds room in the free pores; a body without room cannot be right. */
  readonly holdsTheWater: boolean;
}

/** How far one published relation is from the others. */
export interface RelationSpread {
  readonly min: number;
  readonly max: number;
  /** max / min */
  readonly ratio: number;
}

/** How far published relations are apart. */
export interface WettingSpread {
  readonly widthCm: RelationSpread;
  readonly depthCm: RelationSpread;
}

/** How far water of an emitter reaches by published relations. */
export interface WettingEstimate {
  readonly bodies: readonly WettedBody[];
  readonly all: WettingSpread;
  /** Over the bodies that hold the water; absent when none does. */
  readonly possible?: WettingSpread;
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
 * @example estimateWetting({ emitterFlowCm3PerH: 4000, volumeCm3: 12000, kSatCmPerH: 2, alphaPerCm: 0.05, thetaInitial: 0.1, thetaSaturated: 0.4, meanThetaRise: 0.2 }).all.widthCm.ratio // 1.21
 */
export function estimateWetting(input: WettingInput): WettingEstimate {
  const freePores = input.thetaSaturated - input.thetaInitial;
  const run: WettingRun = {
    frontThetaRise: 0.02,
    conductivityPerThetaCmPerH: input.kSatCmPerH / freePores,
    ...input,
  };
  requireRun(run);
  const faster: WettingRun = { ...run, emitterFlowCm3PerH: 2 * run.emitterFlowCm3PerH };
  const bodies = (Object.keys(wettingRelations) as WettingRelation[]).map((relation): WettedBody => {
    const { source, sizeOf } = wettingRelations[relation];
    const { widthCm, depthCm } = sizeOf(run);
    const atDoubleFlow = sizeOf(faster);
    const thetaRiseOfHalfEllipsoid = (6 * run.volumeCm3) / (Math.PI * widthCm * widthCm * depthCm);
    return {
      relation,
      source,
      widthCm,
      depthCm,
      widthAtDoubleFlowCm: atDoubleFlow.widthCm,
      depthAtDoubleFlowCm: atDoubleFlow.depthCm,
      thetaRiseOfHalfEllipsoid,
      holdsTheWater: thetaRiseOfHalfEllipsoid <= freePores,
    };
  });
  const holding = bodies.filter((body) => body.holdsTheWater);
  return {
    bodies,
    all: sizesOf(bodies),
    ...(holding.length === 0 ? {} : { possible: sizesOf(holding) }),
    pond: flowEffect(run, freePores),
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

const sizesOf = (bodies: readonly WettedBody[]): WettingSpread => ({
  widthCm: spreadOf(bodies.map((body) => body.widthCm)),
  depthCm: spreadOf(bodies.map((body) => body.depthCm)),
});

function spreadOf(values: readonly number[]): RelationSpread {
  const min = Math.min(...values);
  const max = Math.max(...values);
  return { min, max, ratio: max / min };
}

function requireRun(run: WettingRun): void {
  const { emitterFlowCm3PerH, volumeCm3, kSatCmPerH, alphaPerCm, thetaInitial, thetaSaturated } = run;
  requirePositive("estimateWetting", { emitterFlowCm3PerH, volumeCm3, kSatCmPerH, alphaPerCm });
  if (!(thetaInitial >= 0 && thetaInitial < thetaSaturated && thetaSaturated < 1)) {
    throw new RangeError(
      `estimateWetting requires 0 <= thetaInitial < thetaSaturated < 1: got ${thetaInitial} and ${thetaSaturated}`,
    );
  }
  const { conductivityPerThetaCmPerH } = run;
  requirePositive("estimateWetting", { conductivityPerThetaCmPerH });
  for (const name of ["meanThetaRise", "frontThetaRise"] as const) {
    const rise = run[name];
    if (!(rise > 0 && rise <= thetaSaturated - thetaInitial)) {
      throw new RangeError(
        `estimateWetting requires ${name} above 0 and at most the free pore space: got ${rise} of ${thetaSaturated - thetaInitial}`,
      );
    }
  }
}
