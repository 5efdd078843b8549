import type { FittedClass } from "./default-set.js";

/** The text of src/ground/default-classes.ts. */
export function dataFile(classes: readonly FittedClass[]): string {
  const rows = classes.map(({ textureClass, parameters: p }) => {
    const key = textureClass.includes(" ") ? `"${textureClass}"` : textureClass;
    return `  ${key}: {
    thetaResidual: ${p.thetaResidual},
    thetaSaturated: ${p.thetaSaturated},
    alphaPerCm: ${p.alphaPerCm},
    n: ${p.n},
    kSatCmPerH: ${p.kSatCmPerH},
    halfHeadCm: ${p.halfHeadCm},
    exponent: ${p.exponent},
  },`;
  });
  return `import type { GardnerCurveParameters } from "./gardner-curve.js";
import type { TextureClass } from "./texture.js";

/*
 * Written by fit/main.ts from the facts in fit/facts.ts; what it misses is in fit/RESIDUALS.md. Do not edit by hand.
 */

/** What the class curves were fitted to. */
export const defaultClassSource =
  "own fit to Agriculture Victoria (readily available water, table 1), Saxton & Rawls (2006) and FAO Irrigation Water Management Training Manual 5";

/** The default curve of every texture class. */
export const defaultClasses: Readonly<Record<TextureClass, GardnerCurveParameters>> = {
${rows.join("\n")}
};
`;
}
