import type { DefaultUsed } from "../water/result.js";
import { defaults } from "./defaults.js";
import { type Fault, fault } from "./faults.js";
import { pick } from "./parse-default.js";
import { filledMaterial, materialFaults } from "./parse-material.js";
import type { Horizon, Soil } from "./scenario.js";
import type { SoilFile } from "./schema-soil.js";

/** Thinner layers than this would only slow the run down, cm. Our choice. */
const thinnestCm = 1;

/** What the shape of a soil cannot say. `rootDepthCm` is left out where the file's own is not readable. */
export function soilFaults(soil: SoilFile, path: string, rootDepthCm: number | undefined): Fault[] {
  const found = soil.horizons.flatMap((horizon, i) => materialFaults(horizon, `${path}.horizons[${i}]`));
  let aboveCm = 0;
  soil.horizons.forEach(({ toCm }, i) => {
    if (toCm < aboveCm + thinnestCm) {
      found.push(
        fault("layers-not-rising", `${path}.horizons[${i}].toCm`, toCm, { thickness: thinnestCm, above: aboveCm }),
      );
    }
    aboveCm = toCm;
  });
  return rootDepthCm === undefined ? found : [...found, ...rootFaults(soil, path, rootDepthCm)];
}

function rootFaults(soil: SoilFile, path: string, rootDepthCm: number): Fault[] {
  const ends = soil.horizons.map((horizon) => horizon.toCm);
  const last = ends.length - 1;
  if (rootDepthCm > ends[last]) {
    return [fault("profile-above-roots", `${path}.horizons[${last}].toCm`, ends[last], { depth: rootDepthCm })];
  }
  const near = ends.findIndex((end) => end !== rootDepthCm && Math.abs(end - rootDepthCm) < thinnestCm);
  if (near < 0) return [];
  return [
    fault("too-near-roots", `${path}.horizons[${near}].toCm`, ends[near], {
      depth: rootDepthCm,
      thickness: thinnestCm,
    }),
  ];
}

/** A checked soil with its defaults filled in. @throws Error if a horizon has neither a known texture nor a curve of its own. */
export function filledSoil(soil: SoilFile, path: string, used: DefaultUsed[]): Soil {
  const horizons = soil.horizons.map(
    (horizon, i): Horizon => ({
      toCm: horizon.toCm,
      ...filledMaterial(horizon, `${path}.horizons[${i}]`, used),
    }),
  );
  return {
    name: soil.name,
    horizons,
    bottom: soil.bottom ?? { kind: pick(used, `${path}.bottom.kind`, undefined, defaults.bottomKind) },
    ...(soil.cracks === undefined ? {} : { cracks: soil.cracks }),
    ...(soil.trappedAirFraction === undefined ? {} : { trappedAirFraction: soil.trappedAirFraction }),
  };
}
