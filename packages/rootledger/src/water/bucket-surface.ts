import type { BucketValues } from "./bucket-values.js";
import { type EmitterLines, offerWater, type SurfaceWork, spread, surfaceWork } from "./cascade.js";
import type { FaceSums, Forcing } from "./engine.js";
import type { Ground } from "./ground.js";

/** So that filling a cell cannot end a last digit above saturation. */
const nearlyAll = 1 - 1e-12;

/** Room for water on the surface, by lane; rates in cm3/h. */
export interface PondWork {
  readonly surface: SurfaceWork;
  /**
   * How much less a lane draws when its top cell's theta rises by one; 0 where no pond stands. The step follows it in full.
   */
  readonly follow: Float64Array;
  /** What each lane draws at a surface head of zero, at the start of the step. */
  readonly drawn: Float64Array;
  /** Matric flux potential of the top soil at saturation, cm2/h. */
  readonly saturatedCm2PerH: Float64Array;
  readonly lines: EmitterLines;
  readonly innerEdge: "mirror" | "open";
}

/** @example pondWork(ground, lines, "mirror").follow.length // ground.grid.lanes */
export function pondWork(
  { grid, tables, material }: Ground,
  lines: EmitterLines,
  innerEdge: "mirror" | "open",
): PondWork {
  const { lanes } = grid;
  return {
    surface: surfaceWork(lanes),
    follow: new Float64Array(lanes),
    drawn: new Float64Array(lanes),
    lines,
    innerEdge,
    saturatedCm2PerH: Float64Array.from({ length: lanes }, (_, j) => {
      const table = tables[material[j]];
      return table.matricFluxCm2PerH[table.intervals];
    }),
  };
}

/**
 * Lets each lane take what its top cell draws at a surface head of zero. Returns whether any water was there to take.
 */
export function offerSurface(pond: PondWork, ground: Ground, values: BucketValues, forcing: Forcing): boolean {
  const { surface, follow, drawn, saturatedCm2PerH } = pond;
  const { capacity, intake } = surface;
  const { lanes, laneAreaCm2, thicknessCm } = ground.grid;
  const perHalf = 2 / thicknessCm[0];
  let wet = forcing.emitterCm3PerH > 0;
  for (let j = 0; j < lanes; j++) {
    if (forcing.rainCm3PerH[j] > 0) wet = true;
    intake[j] = 0;
    follow[j] = 0;
  }
  surface.runoff[0] = 0;
  if (!wet) return false;
  for (let j = 0; j < lanes; j++) {
    const byMatric = (saturatedCm2PerH[j] - values.matricFluxCm2PerH[j]) * perHalf;
    drawn[j] = laneAreaCm2[j] * (ground.kSatCmPerH[j] + byMatric);
    capacity[j] = drawn[j];
  }
  spreadAnew(pond, forcing);
  for (let j = 0; j < lanes; j++) {
    const ponded = intake[j] > 0 && intake[j] >= capacity[j];
    if (ponded) follow[j] = laneAreaCm2[j] * values.matricFluxSlopeCm2PerH[j] * perHalf;
  }
  return true;
}

/** Lays all water that comes to the surface over the lanes, each within its capacity. @example spreadAnew(pond, forcing) */
export function spreadAnew({ surface, lines, innerEdge }: PondWork, forcing: Forcing): void {
  surface.intake.fill(0);
  offerWater(surface, lines, forcing);
  spread(surface, innerEdge);
}

/**
 * Once the step is solved: where a top cell ended above saturation, no lane takes more than it has room for, and the water is
 * spread anew with these limits, together with what top cells hold above saturation. Nothing is lost: what no lane takes is
 * run-off.
 */
export function settleSurface(
  pond: PondWork,
  ground: Ground,
  forcing: Forcing,
  theta: Float64Array,
  perVolume: Float64Array,
  step: Float64Array,
  faces: FaceSums | undefined,
): void {
  const { surface, lines, innerEdge } = pond;
  const { capacity, intake, outward, inward } = surface;
  const { thetaSaturated } = ground;
  const { lanes, volumeCm3 } = ground.grid;
  const dtH = step[0];
  let settled = true;
  for (let j = 0; j < lanes; j++) if (theta[j] > thetaSaturated[j]) settled = false;
  if (settled) return;
  offerWater(surface, lines, forcing);
  for (let j = 0; j < lanes; j++) {
    theta[j] -= intake[j] * dtH * perVolume[j];
    const room = ((thetaSaturated[j] - theta[j]) * volumeCm3[j]) / dtH;
    if (room < 0) {
      if (faces !== undefined) faces.intakeCm3[j] += room * dtH;
      outward[j] -= 0.5 * room;
      inward[j] -= 0.5 * room;
      theta[j] = thetaSaturated[j];
      capacity[j] = 0;
    } else if (capacity[j] > room * nearlyAll) capacity[j] = room * nearlyAll;
    intake[j] = 0;
  }
  spread(surface, innerEdge);
  for (let j = 0; j < lanes; j++) theta[j] += intake[j] * dtH * perVolume[j];
}
