import type { Result } from "rootledger";

/** One programme on one soil and one of its trees, ready to draw. Hours count from `firstHour` of the season. */
export interface ArmPicture {
  readonly letter: string;
  readonly programme: string;
  readonly soil: string;
  /** First day of the season, ISO. */
  readonly startDate: string;
  /** Hour of the season at which the arrays begin. */
  readonly firstHour: number;
  readonly hours: number;
  readonly storageMm: Float64Array;
  readonly valveOpen: Float64Array;
  readonly rainMm: Float64Array;
  readonly thirstyShare: Float64Array;
  readonly airlessShare: Float64Array;
  /** Litres below the roots since the arrays began. */
  readonly belowSinceStartL: Float64Array;
  readonly airLineMm: number;
  readonly pullLineMm: number;
  readonly airReturnKPa: number;
  readonly pullLimitKPa: number;
  readonly section: Result["section"];
  /** Water content of every cell of the mean tree, `[hour * cells + cell]`. */
  readonly theta: Float64Array;
  /** Air-filled porosity below which roots are airless. */
  readonly airLimitFraction: number;
  readonly rootDepthCm: number;
  readonly canopyDiameterM: number;
}

/** Root-hours and litres of a whole season. */
export interface ArmSeason {
  readonly letter: string;
  readonly programme: string;
  readonly thirstyH: number;
  readonly fineH: number;
  readonly airlessH: number;
  readonly belowL: number;
  readonly belowShare: number;
  /** Shares of the hours in which root-zone water was above the air line and below the pull line. */
  readonly aboveShare: number;
  readonly beneathShare: number;
}

/** Place of a season hour in the arrays, or undefined where they do not reach. */
export function rowOf(arm: ArmPicture, seasonHour: number): number | undefined {
  const row = seasonHour - arm.firstHour;
  return row >= 0 && row < arm.hours ? row : undefined;
}

export type CellState = "fine" | "thirsty" | "airless";

/** State of a cell's roots at one water content. A cell without roots is fine: there is nothing to suffer in it. */
export function cellState(arm: ArmPicture, cell: number, theta: number): CellState {
  const { section } = arm;
  if (!(section.rootShare[cell]! > 0)) return "fine";
  if (theta < section.thetaAtPullLimit[cell]!) return "thirsty";
  const short = section.thetaSaturated[cell]! - theta < arm.airLimitFraction;
  return short && theta > section.thetaAtAirReturn[cell]! ? "airless" : "fine";
}
