import type { Result } from "rootledger";
import { curveOfMaterial, profileLayers, textureClasses, waterTranslator } from "rootledger/ground";
import { sensorCell } from "rootledger/programme";
import type { DemoSoil } from "../../state/demo.js";

/** Ground from the surface down to a depth, ready to be said in every unit. */
type Layers = Parameters<typeof waterTranslator>[0]["layers"];

/** Layers of a soil given by texture and structure. @throws RangeError for a soil given in another way. */
export function layersOf(soil: DemoSoil, fromCm: number, toCm: number): Layers {
  const profile = soil.horizons.map(({ toCm: bottom, texture, structure = "ordinary" }) => {
    const known = textureClasses.find((name) => name === texture);
    if (known === undefined) throw new RangeError(`layersOf requires soils by texture: got ${texture}`);
    return { toCm: bottom, curve: curveOfMaterial({ texture: known, structure }, soil.name) };
  });
  return profileLayers(profile, fromCm, toCm);
}

/** Cell of the picture that an instrument stands in; undefined outside of it. */
export function cellAt(section: Result["section"], depthCm: number, fromRowCm: number): number | undefined {
  const { layerEdgesCm, laneEdgesCm, layers, lanes } = section;
  if (!(depthCm > 0 && depthCm <= layerEdgesCm[layers]! && fromRowCm <= laneEdgesCm[lanes]!)) return undefined;
  return sensorCell(section, 0, { depthCm, fromLineCm: fromRowCm });
}

/** What a reader of water content needs to say a tension, at one depth. */
export function tensionReader(soil: DemoSoil, depthCm: number): (theta: number) => number {
  const layers = layersOf(soil, Math.max(0, depthCm - 0.5), depthCm + 0.5);
  const zone = waterTranslator({ layers, full: { tensionKPa: 10 } });
  const mmPerTheta = layers.reduce((sum, { thicknessCm }) => sum + thicknessCm * 10, 0);
  return (theta) => {
    const waterMm = theta * mmPerTheta;
    return waterMm >= zone.saturatedMm ? 0 : zone.fromDepletionMm(zone.fullMm - waterMm).tensionKPa;
  };
}
