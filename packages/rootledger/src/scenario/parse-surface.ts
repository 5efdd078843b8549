import { daysPerYear } from "../numeric/day-number.js";
import { residueEvaporationCut } from "../tree/mulch.js";
import { curveNumberFor } from "../water/curve-number.js";
import {
  gravelEvaporationCut,
  type LitterLayer,
  litterLayer,
  litterMassKgPerM2,
  looseMulchStorageMm,
} from "../water/litter-layer.js";
import type { DefaultUsed } from "../water/result.js";
import { type Fault, fault } from "./faults.js";
import { pick } from "./parse-default.js";
import { rainHeld } from "./rain-held.js";
import type { Surface, SurfaceLayer } from "./scenario.js";
import type { LayerFile, SurfaceFile } from "./schema-surface.js";
import { surfaceDefaults } from "./surface-defaults.js";

/** Keys that answer one question twice. */
export function surfaceFaults(
  surface: SurfaceFile,
  path: string,
  beside: { readonly rainIntensityMmPerH: number | undefined; readonly coefficient: unknown },
): Fault[] {
  const found: Fault[] = [];
  if (surface.evaporation !== undefined && beside.coefficient === "single") {
    const terms = { other: "a single crop.coefficient", reason: "it holds the soil's evaporation already" };
    found.push(fault("not-beside", `${path}.evaporation`, surface.evaporation, terms));
  }
  if (surface.runoff !== undefined && beside.rainIntensityMmPerH !== undefined) {
    const terms = { other: `${path}.runoff.curveNumber`, reason: "one limit on rain, not two" };
    found.push(fault("not-beside", "weather.rainIntensityMmPerH", beside.rainIntensityMmPerH, terms));
  }
  if (surface.evaporableDepthCm !== undefined && surface.evaporation !== "two-stage") {
    const terms = { others: `${path}.evaporation two-stage`, given: "soil-limited" };
    found.push(fault("only-beside", `${path}.evaporableDepthCm`, surface.evaporableDepthCm, terms));
  }
  return found;
}

/** A checked surface with its defaults filled in, its layer and what is held of the rain worked out for every day of the season. */
export function filledSurface(
  file: SurfaceFile,
  path: string,
  rainMm: ArrayLike<number>,
  used: DefaultUsed[],
): Surface {
  const { evaporation: usual, evaporableDepthCm: depth, canopyStorageMm: store } = surfaceDefaults;
  const evaporation = pick<Surface["evaporation"]>(used, `${path}.evaporation`, file.evaporation, usual);
  const surface = {
    evaporation,
    evaporableDepthCm:
      evaporation === "two-stage"
        ? pick(used, `${path}.evaporableDepthCm`, file.evaporableDepthCm, depth)
        : depth.value,
    canopyStorageMm: pick(used, `${path}.canopyStorageMm`, file.canopyStorageMm, store),
    ...(file.layer === undefined ? {} : { layer: filledLayer(file.layer, `${path}.layer`, rainMm.length, used) }),
    ...(file.runoff === undefined ? {} : { curveNumber: curveNumberOf(file.runoff, `${path}.runoff`, used) }),
  };
  const rain = rainHeld(surface, rainMm);
  return rain === undefined ? surface : { ...surface, rain };
}

function curveNumberOf(runoff: NonNullable<SurfaceFile["runoff"]>, path: string, used: DefaultUsed[]): number {
  const antecedent = pick<"dry" | "usual" | "wet">(
    used,
    `${path}.antecedent`,
    runoff.antecedent,
    surfaceDefaults.antecedent,
  );
  return curveNumberFor(antecedent, runoff.curveNumber);
}

function filledLayer(file: LayerFile, path: string, days: number, used: DefaultUsed[]): SurfaceLayer {
  const usual = file.kind === "litter" ? surfaceDefaults.litterWhere : surfaceDefaults.mulchWhere;
  const where = pick<SurfaceLayer["where"]>(used, `${path}.where`, file.where, usual);
  const evaporationFactor = new Float64Array(days);
  const storageMm = new Float64Array(days);
  const layerOn = layerByDay(file, path, used);
  for (let d = 0; d < days; d++) {
    const layer = layerOn(d);
    evaporationFactor[d] = layer.evaporationFactor;
    storageMm[d] = layer.storageMm;
  }
  return { where, evaporationFactor, storageMm };
}

type LayerEffect = Pick<LitterLayer, "evaporationFactor" | "storageMm">;

function layerByDay(file: LayerFile, path: string, used: DefaultUsed[]): (day: number) => LayerEffect {
  if (file.kind === "gravel") {
    const constant = { evaporationFactor: 1 - gravelEvaporationCut(file.thicknessCm), storageMm: 0 };
    return () => constant;
  }
  if (file.kind === "organic-mulch") {
    const cover = pick(used, `${path}.coverFraction`, file.coverFraction, surfaceDefaults.mulchCoverFraction);
    const constant = {
      evaporationFactor: 1 - residueEvaporationCut(cover),
      storageMm: cover * looseMulchStorageMm(file.thicknessCm),
    };
    return () => constant;
  }
  const { litterfallKgPerM2Year: fall, decayPerYear: decay } = surfaceDefaults;
  const budget = {
    litterfallKgPerM2Year: pick(used, `${path}.litterfallKgPerM2Year`, file.litterfallKgPerM2Year, fall),
    decayPerYear: pick(used, `${path}.decayPerYear`, file.decayPerYear, decay),
  };
  return (day) => litterLayer(litterMassKgPerM2(budget, day / daysPerYear, file.massKgPerM2));
}
