import { dayNumber } from "../numeric/day-number.js";
import type { CropPreset } from "../tree/crop-preset.js";
import type { DefaultUsed } from "../water/result.js";
import { rootDefaults } from "./crop-defaults.js";
import { type Default, defaults } from "./defaults.js";
import { type Fault, fault } from "./faults.js";
import { pick } from "./parse-default.js";
import { filledMaterial, materialFaults } from "./parse-material.js";
import type { NurseryBall, Roots } from "./scenario.js";
import type { BallFile, RootsFile } from "./schema-roots.js";

/** Nearer than this two edges leave no room for lanes between them, cm. */
const apartCm = 4;

/** What a tree's roots take from its nursery ball, where the file is silent. */
const ofBall = (value: number): Default<number> => ({
  value,
  source: "roots of a tree just planted are those of its nursery ball",
  published: "none",
});

/** What the defaults of the roots follow: the ball, else the crop. */
export interface RootsBeside {
  readonly ball: BallFile | undefined;
  readonly preset: CropPreset | undefined;
}

/** Rooted depth where the file gives none. */
export const rootDepthOf = ({ ball, preset }: RootsBeside): Default<number> =>
  ball === undefined ? rootDefaults(preset).rootDepthCm : ofBall(ball.depthCm);

/** What the shape of the roots cannot say. */
export function rootsFaults(file: RootsFile, beside: RootsBeside, path: string): Fault[] {
  const found: Fault[] = [];
  const { ball } = beside;
  const depthCm = file.depthCm ?? rootDepthOf(beside).value;
  if (file.litter !== undefined && file.litter.thicknessCm >= depthCm) {
    const terms = { other: "depthCm", limit: depthCm };
    found.push(fault("not-below", `${path}.litter.thicknessCm`, file.litter.thicknessCm, terms));
  }
  const lateral = file.lateral?.kind ?? (ball === undefined ? defaults.lateralKind.value : "disc");
  const growth = file.growth ?? [];
  growth.forEach((point, i) => {
    const at = `${path}.growth[${i}]`;
    const before = growth[i - 1]?.date;
    if (before !== undefined && dayNumber(point.date) <= dayNumber(before)) {
      found.push(fault("dates-not-rising", `${at}.date`, point.date, { before }));
    }
    if (point.depthCm > depthCm) {
      found.push(fault("above-maximum", `${at}.depthCm`, point.depthCm, { maximum: depthCm }));
    } else if (file.litter !== undefined && point.depthCm <= file.litter.thicknessCm) {
      found.push(fault("not-above-minimum", `${at}.depthCm`, point.depthCm, { minimum: file.litter.thicknessCm }));
    }
    if (point.radiusCm !== undefined && lateral !== "disc") {
      found.push(fault("only-beside", `${at}.radiusCm`, point.radiusCm, { given: lateral, others: "disc" }));
    }
  });
  return found;
}

/** What the shape of a ball cannot say. Spacings are left out where the file's own are not readable. */
export function ballFaults(
  ball: BallFile,
  path: string,
  spacing: { readonly treeM: number | undefined; readonly rowM: number | undefined },
): Fault[] {
  const found = materialFaults(ball, path);
  const { diameterCm, emitterDistanceCm } = ball;
  const wallCm = diameterCm / 2;
  const near = (a: number, b: number): boolean => a !== b && Math.abs(a - b) < apartCm;
  for (const [other, value] of [
    ["diameterCm / 2", wallCm],
    ["0", 0],
  ] as const) {
    if (!near(emitterDistanceCm, value)) continue;
    found.push(fault("too-near", `${path}.emitterDistanceCm`, emitterDistanceCm, { other, value, apart: apartCm }));
  }
  const halfCm = Math.min(spacing.treeM ?? Number.POSITIVE_INFINITY, spacing.rowM ?? Number.POSITIVE_INFINITY) * 50;
  const limit = halfCm - apartCm;
  const other = "half the tree spacing";
  if (emitterDistanceCm >= limit) {
    found.push(fault("not-below", `${path}.emitterDistanceCm`, emitterDistanceCm, { other, limit }));
  }
  if (wallCm >= limit) found.push(fault("not-below", `${path}.diameterCm`, diameterCm, { other, limit: 2 * limit }));
  return found;
}

export function filledRoots(file: RootsFile, beside: RootsBeside, path: string, used: DefaultUsed[]): Roots {
  return {
    depthCm: pick(used, `${path}.depthCm`, file.depthCm, rootDepthOf(beside)),
    topShare: pick(used, `${path}.topShare`, file.topShare, rootDefaults(beside.preset).topShare),
    lateral: filledLateral(file.lateral, beside.ball, `${path}.lateral`, used),
    compensationOnset: pick(used, `${path}.compensationOnset`, file.compensationOnset, defaults.compensationOnset),
    ...(file.litter === undefined ? {} : { litter: file.litter }),
    ...(file.growth === undefined ? {} : { growth: file.growth }),
  };
}

function filledLateral(
  file: RootsFile["lateral"],
  ball: BallFile | undefined,
  path: string,
  used: DefaultUsed[],
): Roots["lateral"] {
  if (file === undefined && ball !== undefined) {
    return { kind: "disc", radiusCm: pick(used, `${path}.radiusCm`, undefined, ofBall(ball.diameterCm / 2)) };
  }
  if (file === undefined) return { kind: pick(used, `${path}.kind`, undefined, defaults.lateralKind) };
  if (file.kind !== "along-lines") return file;
  return {
    kind: file.kind,
    halfWidthCm: pick(used, `${path}.halfWidthCm`, file.halfWidthCm, defaults.lateralHalfWidthCm),
  };
}

export const filledBall = (ball: BallFile, path: string, used: DefaultUsed[]): NurseryBall => ({
  diameterCm: ball.diameterCm,
  depthCm: ball.depthCm,
  emitterDistanceCm: ball.emitterDistanceCm,
  material: filledMaterial(ball, path, used),
});
