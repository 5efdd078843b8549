import { classSet } from "../ground/class-curves.js";
import type { ClassSet } from "../ground/class-set.js";
import { curveOfMaterial, type Material } from "../ground/material.js";
import { type TextureClass, textureClasses } from "../ground/texture.js";
import { headFromTension } from "../units.js";
import type { DefaultUsed } from "../water/result.js";
import { defaults } from "./defaults.js";
import { type Fault, fault } from "./faults.js";
import { nearestWord } from "./nearest-word.js";
import { pick } from "./parse-default.js";
import { type MaterialFile, materialWords } from "./schema-material.js";

/** What a field that only goes with some materials goes with. */
const goesWith = {
  curveSet: ["texture"],
  limits: ["texture"],
  structure: ["texture", "particles"],
  nearSaturation: ["vanGenuchten"],
} as const;

/** What the shape of a horizon's material cannot say. */
export function materialFaults(file: MaterialFile, path: string): Fault[] {
  const given = materialWords.filter((word) => file[word] !== undefined);
  const [word] = given;
  if (word === undefined || given.length > 1) {
    return [fault("exactly-one-of", path, file, { options: materialWords.join(", ") })];
  }
  const found: Fault[] = [];
  for (const [field, words] of Object.entries(goesWith)) {
    const value = file[field as keyof typeof goesWith];
    if (value === undefined || words.some((w) => w === word)) continue;
    found.push(fault("only-beside", `${path}.${field}`, value, { others: words.join(", "), given: word }));
  }
  const { texture } = file;
  if (texture !== undefined && textureClass(texture) === undefined) {
    const nearest = nearestWord(texture, textureClasses);
    const known = textureClasses.join(", ");
    found.push(
      nearest === undefined
        ? fault("not-one-of", `${path}.texture`, texture, { options: known })
        : fault("unknown-texture", `${path}.texture`, texture, { nearest, known }),
    );
  }
  for (const curve of ["vanGenuchten", "brooksCorey"] as const) {
    const parameters = file[curve];
    if (parameters !== undefined && parameters.thetaResidual >= parameters.thetaSaturated) {
      const terms = { other: "thetaSaturated", limit: parameters.thetaSaturated };
      found.push(fault("not-below", `${path}.${curve}.thetaResidual`, parameters.thetaResidual, terms));
    }
  }
  return found.length > 0 ? found : curveFaults(file, path, word);
}

/** Refuses numbers that are each in range and give no curve together. */
function curveFaults(file: MaterialFile, path: string, word: (typeof materialWords)[number]): Fault[] {
  try {
    curveOfMaterial(filledMaterial(file, path, []), word);
    return [];
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const at = file.limits !== undefined ? "limits" : file.curveSet !== undefined ? "curveSet" : word;
    return [fault("no-such-curve", `${path}.${at}`, file[at], { reason: error.message })];
  }
}

/** A checked material with its defaults filled in. @throws Error if the horizon is made of nothing known. */
export function filledMaterial(file: MaterialFile, path: string, used: DefaultUsed[]): Material {
  const stones = file.stonesFraction === undefined ? {} : { stonesFraction: file.stonesFraction };
  if (file.vanGenuchten !== undefined) {
    const near = file.nearSaturation === undefined ? {} : { nearSaturation: file.nearSaturation };
    return { ...stones, ...near, vanGenuchten: file.vanGenuchten };
  }
  if (file.brooksCorey !== undefined) return { ...stones, brooksCorey: file.brooksCorey };
  if (file.points !== undefined) {
    const points = file.points.map(({ tensionKPa, ...rest }) => ({
      headCm: tensionKPa === 0 ? 0 : headFromTension(tensionKPa),
      ...rest,
    }));
    return { ...stones, points };
  }
  const structure = pick(used, `${path}.structure`, file.structure, defaults.structure);
  if (file.particles !== undefined) {
    const { densityFactor, ...particles } = file.particles;
    const density = densityFactor === undefined ? {} : { densityFactor };
    return { ...stones, structure, particles: { ...particles, ...density } };
  }
  const texture = textureClass(file.texture);
  if (texture === undefined) throw new Error(`filledMaterial requires a checked horizon: got texture ${file.texture}`);
  return {
    ...stones,
    structure,
    texture,
    ...setOf(file.curveSet, texture),
    ...(file.limits === undefined ? {} : { limits: filledLimits(file.limits) }),
  };
}

/** @throws RangeError if the set has no such class. */
function setOf(name: MaterialFile["curveSet"], texture: TextureClass): { readonly classSet?: ClassSet } {
  if (name === undefined || name === "default") return {};
  const found = classSet(name, texture);
  if (found === undefined) throw new RangeError(`curveOfMaterial requires a set with ${texture}: got ${name}`);
  return { classSet: found };
}

function filledLimits({ saturation, ...limits }: NonNullable<MaterialFile["limits"]>) {
  return saturation === undefined ? limits : { ...limits, saturation };
}

const textureClass = (text: string | undefined): TextureClass | undefined =>
  textureClasses.find((known) => known === text);
