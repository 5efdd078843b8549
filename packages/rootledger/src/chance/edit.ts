import type { Structure } from "../ground/structure.js";
import { rainHeld } from "../scenario/rain-held.js";
import type { Block, Comparison, Horizon, SiteWeather, Soil, Surface, Tree } from "../scenario/scenario.js";
import type { Draw } from "./draw.js";
import { soilHolding } from "./edit-field-capacity.js";
import { editLimits } from "./edit-limits.js";
import type { UnknownId } from "./prior.js";

const words: readonly Structure[] = ["tight", "ordinary", "crumbly"];
/** Roots that end this close to a horizon's boundary end on it, cm: a thinner layer of cells would only cost time. */
const boundaryCm = 4;
/** The upper limit of transpiration and evaporation is at least Kcb + 0.05: FAO-56 (Allen et al. 1998), equation 72. */
const kcMaxAboveKcb = 0.05;

/**
 * The comparison as one member sees it: the same edit of block, soils and weather for every programme. What a draw does not
 * name stays. Field capacity moves in horizons that have a texture class. A structure step moves the word of each horizon that has one; at the end of the scale the word stays. Roots that
 * would end within 4 cm of a horizon's boundary end on it. What leaves and litter hold of the rain follows the drawn year;
 * coefficients that the parser moved by wind, humidity or heat stay those of the comparison's own season.
 *
 * @param weatherYears the seasons that `weather-year` counts from 1; 0 is the comparison's own
 * @throws RangeError if a value is not finite or a weather year is not there.
 * @example editComparison(comparison, draw).block.tree.roots.depthCm
 */
export function editComparison(
  comparison: Comparison,
  draw: Draw,
  weatherYears: readonly SiteWeather[] = [],
): Comparison {
  const at = (id: UnknownId): number | undefined => {
    const place = draw.ids.indexOf(id);
    return place < 0 ? undefined : draw.values[place];
  };
  draw.values.forEach((value, i) => {
    if (!Number.isFinite(value))
      throw new RangeError(`editComparison requires finite draws: got ${draw.ids[i]} ${value}`);
  });
  const weather = thirstierHours(yearOf(comparison.weather, weatherYears, at("weather-year")), at("kcb"));
  const block = editBlock(comparison, at);
  return {
    ...comparison,
    block: block.surface === undefined ? block : { ...block, surface: underRain(block.surface, weather.rainMm) },
    soils: comparison.soils.map((soil) =>
      editSoil(soilHolding(soil, at("field-capacity")), at("k-sat"), at("structure")),
    ),
    weather,
  };
}

function underRain({ rain: _, ...surface }: Surface, rainMm: Float64Array): Surface {
  const rain = rainHeld(surface, rainMm);
  return rain === undefined ? surface : { ...surface, rain };
}

function editBlock({ block, soils }: Comparison, at: (id: UnknownId) => number | undefined): Block {
  const { tree, lines } = block;
  const { roots } = tree;
  const width = at("root-width");
  const factor = at("kcb");
  const lateral = width === undefined ? roots.lateral : widened(roots.lateral, width);
  return {
    ...block,
    tree: {
      ...(factor === undefined ? tree : thirstier(tree, factor)),
      roots: {
        ...roots,
        depthCm: onBoundary(at("root-depth") ?? roots.depthCm, soils),
        topShare: at("root-top-share") ?? roots.topShare,
        compensationOnset: at("compensation-onset") ?? roots.compensationOnset,
        lateral,
      },
      limits: editLimits(tree.limits, at),
    },
    lines: {
      ...lines,
      lowQuarterUniformityFraction: at("uniformity") ?? lines.lowQuarterUniformityFraction,
    },
  };
}

/** @param width factor on the wetted reach, else cm */
function widened(lateral: Block["tree"]["roots"]["lateral"], width: number): Block["tree"]["roots"]["lateral"] {
  if (lateral.kind === "disc") return { ...lateral, radiusCm: width };
  return lateral.kind === "along-lines" ? { ...lateral, halfWidthCm: width } : { ...lateral, widthFactor: width };
}

function thirstier(tree: Tree, factor: number): Tree {
  const kcb = tree.kcb.map((point) => ({ ...point, kcb: point.kcb * factor }));
  const { days } = tree;
  if (days === undefined) return { ...tree, kcb };
  const daily = days.kcb.map((value) => value * factor);
  const kcMax = days.kcMax.map((most, d) =>
    most > 0 && most < daily[d] + kcMaxAboveKcb ? daily[d] + kcMaxAboveKcb : most,
  );
  return { ...tree, kcb, days: { ...days, kcb: daily, kcMax } };
}

/** Own transpiration by hour moves by the same factor as Kcb would. */
function thirstierHours(weather: SiteWeather, factor: number | undefined): SiteWeather {
  const mm = weather.hourly?.transpirationMm;
  if (factor === undefined || mm === undefined) return weather;
  return { ...weather, hourly: { ...weather.hourly, transpirationMm: mm.map((value) => value * factor) } };
}

function onBoundary(depthCm: number, soils: readonly Soil[]): number {
  const boundaries = soils.flatMap(({ horizons }) => horizons.map(({ toCm }) => toCm));
  const near = boundaries.filter((toCm) => Math.abs(toCm - depthCm) < boundaryCm);
  return near.length === 0 ? depthCm : near.reduce((a, b) => (Math.abs(a - depthCm) <= Math.abs(b - depthCm) ? a : b));
}

function editSoil(soil: Soil, kSatFactor: number | undefined, step: number | undefined): Soil {
  const horizons = step === undefined ? soil.horizons : soil.horizons.map((horizon) => stepped(horizon, step));
  return kSatFactor === undefined ? { ...soil, horizons } : { ...soil, horizons, kSatFactor };
}

function stepped(horizon: Horizon, step: number): Horizon {
  if (!("texture" in horizon || "particles" in horizon)) return horizon;
  const word = words[words.indexOf(horizon.structure ?? "ordinary") + Math.round(step)];
  return word === undefined ? horizon : { ...horizon, structure: word };
}

function yearOf(ownYear: SiteWeather, years: readonly SiteWeather[], index: number | undefined): SiteWeather {
  if (index === undefined || index === 0) return ownYear;
  const year = years[index - 1];
  if (year === undefined)
    throw new RangeError(`editComparison requires a weather year from 0 to ${years.length}: got ${index}`);
  if (ownYear.hourly !== undefined)
    throw new RangeError("editComparison requires weather by day to draw years: the comparison has records by hour");
  return year;
}
