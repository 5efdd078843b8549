import { type SaxtonRawlsSoil, saxtonRawls } from "../src/ground/saxton-rawls.js";
import { type TextureClass, textureClasses } from "../src/ground/texture.js";
import { textureCentre, usualOrganicMatterFraction } from "../src/ground/texture-centre.js";
import { type HeldRow, heldRows } from "./facts.js";
import { leastSquares } from "./least-squares.js";

export interface Target {
  readonly mmPerM: number;
  readonly origin: "printed" | "interpolated";
}

export type Held = keyof HeldRow;

export interface ClassTargets {
  readonly held: Readonly<Record<Held, Target>>;
  readonly saxtonRawls: SaxtonRawlsSoil;
}

const pedotransfer = (textureClass: TextureClass): SaxtonRawlsSoil =>
  saxtonRawls({
    ...textureCentre(textureClass),
    organicMatterFraction: usualOrganicMatterFraction,
  });

/** Plane a + b sand + c clay through the classes that have a value. */
function plane(values: ReadonlyMap<TextureClass, number>): (textureClass: TextureClass) => number {
  const terms = (textureClass: TextureClass): number[] => {
    const { sandFraction, clayFraction } = textureCentre(textureClass);
    return [1, sandFraction, clayFraction];
  };
  const coefficients = leastSquares([...values.keys()].map(terms), [...values.values()]);
  return (textureClass) => terms(textureClass).reduce((sum, term, i) => sum + term * coefficients[i], 0);
}

const printed = (held: Held): Map<TextureClass, number> => {
  const found = new Map<TextureClass, number>();
  for (const textureClass of textureClasses) {
    const value = heldRows[textureClass]?.[held];
    if (value !== undefined) found.set(textureClass, value);
  }
  return found;
};

/**
 * What each class should hold. Printed values stand. Elsewhere:
 * - 8-1500 kPa is what Saxton & Rawls hold from 33 to 1500 kPa plus a plane in sand and clay fitted to the difference in
 *   the six printed classes. In silt the plane is below zero: the printed medium and fine classes, too, are drier
 *   at 33 kPa than Saxton & Rawls, and FAO-56 table 19 gives silt and silt loam 130-200 mm/m;
 * - the drier end of the other ranges is a share of it, the logarithm of the share a plane in sand and clay fitted to
 *   the printed classes.
 */
export function classTargets(): ReadonlyMap<TextureClass, ClassTargets> {
  const available = (textureClass: TextureClass): number => {
    const soil = pedotransfer(textureClass);
    return 1000 * (soil.theta33 - soil.theta1500);
  };
  const whole = printed("to1500");
  const excess = plane(
    new Map([...whole].map(([textureClass, value]) => [textureClass, value - available(textureClass)])),
  );
  const to1500 = new Map<TextureClass, Target>();
  for (const textureClass of textureClasses) {
    const value = whole.get(textureClass);
    const extra = excess(textureClass);
    to1500.set(
      textureClass,
      value === undefined
        ? { mmPerM: available(textureClass) + extra, origin: "interpolated" }
        : { mmPerM: value, origin: "printed" },
    );
  }
  const held = (which: Held): Map<TextureClass, Target> => {
    if (which === "to1500") return to1500;
    const rows = printed(which);
    const wholeOf = (textureClass: TextureClass): number => to1500.get(textureClass)?.mmPerM ?? Number.NaN;
    const share = plane(
      new Map([...rows].map(([textureClass, value]) => [textureClass, Math.log(value / wholeOf(textureClass))])),
    );
    const found = new Map<TextureClass, Target>();
    for (const textureClass of textureClasses) {
      const value = rows.get(textureClass);
      found.set(
        textureClass,
        value === undefined
          ? { mmPerM: wholeOf(textureClass) * Math.exp(share(textureClass)), origin: "interpolated" }
          : { mmPerM: value, origin: "printed" },
      );
    }
    return found;
  };
  const tables = { to20: held("to20"), to40: held("to40"), to60: held("to60"), to1500 };
  const result = new Map<TextureClass, ClassTargets>();
  for (const textureClass of textureClasses) {
    const of = (which: Held): Target => {
      const target = tables[which].get(textureClass);
      if (target === undefined) throw new RangeError(`no target for ${textureClass}`);
      return target;
    };
    result.set(textureClass, {
      held: { to20: of("to20"), to40: of("to40"), to60: of("to60"), to1500: of("to1500") },
      saxtonRawls: pedotransfer(textureClass),
    });
  }
  return result;
}
