import type { Ground } from "./ground.js";

/** A process slot: writes the evaporation of each lane's top cell, cm3/h, at most `potentialCm3PerH`. */
export type EvaporationProcess = (
  outCm3PerH: Float64Array,
  theta: Float64Array,
  potentialCm3PerH: Float64Array,
) => void;

/**
 * Soil-limited evaporation from the top layer: full while the layer is wetter than at 33 kPa, falling linearly to nothing
 * at half its water content at 1500 kPa (air-dry). The two end points are those of FAO-56 eq. 73-74 (TEW counts water from
 * field capacity to half the wilting point); the straight line between them is a simplification of its two stages.
 *
 * @example soilLimitedEvaporation(ground)(out, theta, potential)
 */
export function soilLimitedEvaporation(ground: Ground): EvaporationProcess {
  const { lanes } = ground.grid;
  const airDry = new Float64Array(lanes);
  const range = new Float64Array(lanes);
  for (let j = 0; j < lanes; j++) {
    const curve = ground.tables[ground.material[j]].curve;
    airDry[j] = 0.5 * curve.thetaAt(-15300);
    if (airDry[j] < curve.thetaResidual) airDry[j] = curve.thetaResidual;
    range[j] = curve.thetaAt(-336.6) - airDry[j];
  }
  return (outCm3PerH, theta, potentialCm3PerH) => {
    for (let j = 0; j < outCm3PerH.length; j++) {
      const wetness = (theta[j] - airDry[j]) / range[j];
      outCm3PerH[j] = wetness <= 0 ? 0 : wetness >= 1 ? potentialCm3PerH[j] : wetness * potentialCm3PerH[j];
    }
  };
}
