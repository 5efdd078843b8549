import { column, measure, type Result } from "rootledger";
import type { ArmPicture, ArmSeason } from "../charts/arm-picture.js";
import type { Scene } from "../state/scene.js";
import type { Answer } from "../worker/protocol.js";
import { outsideLimits } from "./findings.js";

/** Everything the pictures of one arm are drawn from. */
export interface ArmView {
  readonly picture: ArmPicture;
  readonly season: ArmSeason;
  readonly result: Result;
  readonly tree: number;
}

/** What the pictures take from the block rather than from the result. */
export interface BlockFacts {
  readonly letters: readonly string[];
  readonly seasonStart: string;
  readonly canopyDiameterM: number;
}

/** Arms of an answer as `views[soil][programme]`, for one tree. */
export function armViews(answer: Answer, tree: Scene["tree"], block: BlockFacts): ArmView[][] {
  const soils = [...new Set(answer.result.arms.map((arm) => arm.soil))];
  return soils.map((soil) =>
    answer.result.arms
      .filter((arm) => arm.soil === soil)
      .map((arm, i) => viewOf(arm.result, tree, block.letters[i]!, answer, block)),
  );
}

/** The view of one result for one of its trees. */
export function viewOf(
  result: Result,
  tree: Scene["tree"],
  letter: string,
  answer: Pick<Answer, "ground" | "firstDay">,
  block: BlockFacts,
): ArmView {
  const t = Math.max(0, result.trees.indexOf(tree));
  const picture = pictureOf(result, t, letter, answer, block);
  return { result, tree: t, picture, season: seasonOf(result, t, picture) };
}

function pictureOf(
  result: Result,
  tree: number,
  letter: string,
  answer: Pick<Answer, "ground" | "firstDay">,
  block: BlockFacts,
): ArmPicture {
  const hour = (name: string): Float64Array => ofTree(column(result.hours, name).values, result.hours.trees, tree);
  const below = hour("belowRoots");
  const belowSinceStartL = new Float64Array(below.length);
  below.forEach((litres, row) => {
    belowSinceStartL[row] = (row > 0 ? belowSinceStartL[row - 1]! : 0) + litres;
  });
  return {
    letter,
    programme: result.programmeName,
    soil: result.soilName,
    startDate: block.seasonStart,
    firstHour: answer.firstDay * 24,
    hours: result.hours.rows,
    storageMm: hour("rootZoneWater"),
    valveOpen: hour("valveOpen"),
    rainMm: hour("rain"),
    thirstyShare: hour("thirstyShare"),
    airlessShare: hour("airlessShare"),
    belowSinceStartL,
    airLineMm: result.window.waterAtAirReturnMm,
    pullLineMm: result.window.waterAtPullLimitMm,
    airReturnKPa: result.window.airReturnKPa,
    pullLimitKPa: result.window.pullLimitKPa,
    section: result.section,
    theta: result.cells?.theta ?? new Float64Array(0),
    airLimitFraction: answer.ground.airLimitFraction,
    rootDepthCm: answer.ground.rootDepthCm,
    canopyDiameterM: block.canopyDiameterM,
  };
}

function seasonOf(result: Result, tree: number, picture: ArmPicture): ArmSeason {
  const value = (id: string): number => measure(result, id).values[tree]!;
  const [aboveShare, beneathShare] = outsideLimits(picture.storageMm, picture.airLineMm, picture.pullLineMm);
  return {
    letter: picture.letter,
    programme: picture.programme,
    aboveShare,
    beneathShare,
    thirstyH: value("thirsty"),
    fineH: value("fine"),
    airlessH: value("airless"),
    belowL: value("below-roots"),
    belowShare: value("below-roots-share"),
  };
}

/** One tree's values of a column that interleaves trees. */
function ofTree(values: Float64Array, trees: number, tree: number): Float64Array {
  if (trees === 1) return values;
  const out = new Float64Array(values.length / trees);
  for (let row = 0; row < out.length; row++) out[row] = values[row * trees + tree]!;
  return out;
}
