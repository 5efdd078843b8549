import { type Draw, type DrawSource, drawMaker } from "../chance/draw.js";
import { editComparison } from "../chance/edit.js";
import { sensorCell } from "../programme/sensor-cell.js";
import { everyPart } from "../scenario/every-part.js";
import { groundOf } from "../scenario/ground-of.js";
import type { SimulateOptions } from "../scenario/options.js";
import type { Scenario, SiteWeather } from "../scenario/scenario.js";
import { createSimulation } from "../scenario/simulation.js";
import { youngTree } from "../scenario/young-tree.js";
import { tensionFromHead } from "../units.js";
import { cellValues, lookUpInto } from "../water/ground.js";
import type { SensorPlace } from "./sensor-place.js";

/** What a sensor would read, at whole hours from `fromHour`. */
export interface Trace {
  readonly place: SensorPlace;
  readonly tensionKPa: Float64Array;
  readonly theta: Float64Array;
}

/** Hours of the season that sensors are asked about; values hold at the end of each hour. */
export interface TwinWindow {
  readonly places: readonly SensorPlace[];
  readonly fromHour: number;
  readonly hours: number;
}

/** How a sensor's twin is run. */
export interface TwinOptions extends Pick<SimulateOptions, "engine" | "lanes" | "geometry"> {}

/**
 * What sensors at stated places of the mean tree would read hour by hour: the sensor twin of one run. The reading is the
 * cell's mean; a real cup sees a few centimetres and a real field differs from tree to tree.
 *
 * @throws RangeError if the scenario does not fit together, hours lie outside the season, a place outside the section, or the
 * run fails on the way.
 * @example sensorTraces(scenario, { places: [{ depthCm: 20, fromLineCm: 10 }], fromHour: 0, hours: 48 })[0].tensionKPa
 */
export function sensorTraces(scenario: Scenario, window: TwinWindow, options: TwinOptions = {}): Trace[] {
  const { places, fromHour, hours } = window;
  const seasonH = scenario.season.days * 24;
  if (
    !(
      Number.isInteger(fromHour) &&
      Number.isInteger(hours) &&
      fromHour >= 0 &&
      hours > 0 &&
      fromHour + hours <= seasonH
    )
  ) {
    throw new RangeError(
      `sensorTraces requires whole hours within the season, 0 to ${seasonH}: got ${hours} from ${fromHour}`,
    );
  }
  const simulation = createSimulation(scenario, {
    ...everyPart(scenario),
    ...options,
    trees: ["mean"],
    cells: { fromHour, hours },
  });
  while (simulation.status().kind === "running" && simulation.hour() < fromHour + hours) simulation.step();
  const { section, cells, status } = simulation.result();
  if (status.kind === "failed") throw new RangeError(`sensorTraces requires a run that can go on: ${status.message}`);
  if (cells === undefined) throw new RangeError("sensorTraces requires cells: got none");
  const { ground } = groundOf(scenario, { lanes: options.lanes, geometry: options.geometry, youngTree });
  const at = places.map((place) => sensorCell(section, section.lineAtCm[0], place));
  const traces = places.map((place) => ({
    place,
    tensionKPa: new Float64Array(hours),
    theta: new Float64Array(hours),
  }));
  const values = cellValues(ground.grid.cells);
  for (let hour = 0; hour < hours; hour++) {
    const theta = cells.theta.subarray(hour * ground.grid.cells, (hour + 1) * ground.grid.cells);
    lookUpInto(values, ground, theta);
    traces.forEach((trace, p) => {
      trace.theta[hour] = theta[at[p]];
      trace.tensionKPa[hour] = tensionFromHead(values.headCm[at[p]]);
    });
  }
  return traces;
}

/** Expected reading with its band over draws of what is unknown. */
export interface SensorTwin {
  readonly place: SensorPlace;
  /** With the scenario as it stands. */
  readonly tensionKPa: Float64Array;
  readonly theta: Float64Array;
  /** 5, 50 and 95 % of the draws, hour by hour. */
  readonly lowKPa: Float64Array;
  readonly medianKPa: Float64Array;
  readonly highKPa: Float64Array;
}

/** Draws that a band is made of. */
export interface TwinDraws {
  readonly source: DrawSource;
  readonly members: number;
  readonly weatherYears?: readonly SiteWeather[];
}

/** Expected readings over draws of what is unknown. */
export interface TwinBand {
  readonly sensors: readonly SensorTwin[];
  readonly members: number;
  /** Draws that gave no reading, with the reason. */
  readonly failed: readonly { readonly member: number; readonly reason: string }[];
}

/**
 * The sensor twin with its band: every draw's traces at the same places, and their quantiles hour by hour.
 *
 * @throws RangeError as `sensorTraces` for the scenario itself, as `drawMaker` for the draws, or if every draw fails.
 * @example sensorTwin(scenario, { places: [{ depthCm: 20, fromLineCm: 10 }], fromHour: 0, hours: 48 }, { source: { kind: "priors", priors, seed: 1 }, members: 40 }).sensors[0].highKPa
 */
export function sensorTwin(
  scenario: Scenario,
  window: TwinWindow,
  draws: TwinDraws,
  options: TwinOptions = {},
): TwinBand {
  const own = sensorTraces(scenario, window, options);
  const failed: { member: number; reason: string }[] = [];
  const drawn: Trace[][] = [];
  for (const { member, run } of drawnScenarios(scenario, draws)) {
    try {
      drawn.push(sensorTraces(run(), window, options));
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      failed.push({ member, reason: error.message });
    }
  }
  if (drawn.length === 0)
    throw new RangeError(`sensorTwin requires a draw that runs: got ${failed[0]?.reason ?? "none"}`);
  const sensors = own.map((trace, p): SensorTwin => {
    const band = [0.05, 0.5, 0.95].map((share) => quantiles(drawn, p, share, window.hours));
    return { ...trace, lowKPa: band[0], medianKPa: band[1], highKPa: band[2] };
  });
  return { sensors, members: drawn.length, failed };
}

/** Each member's number and the scenario its draw makes, made when asked for. */
export function* drawnScenarios(
  scenario: Scenario,
  { source, members, weatherYears = [] }: TwinDraws,
): Generator<{ readonly member: number; readonly values: Float64Array; readonly run: () => Scenario }> {
  const drawOf = drawMaker(source);
  for (let member = 0; member < members; member++) {
    const draw = drawOf(member);
    yield { member, values: draw.values, run: () => drawnScenario(scenario, draw, weatherYears) };
  }
}

/** A scenario as one draw sees it. @throws RangeError as `editComparison`. @example drawnScenario(scenario, { member: 0, ids: ["kcb"], values: Float64Array.of(1.1) }).block.tree.kcb */
export function drawnScenario(scenario: Scenario, draw: Draw, weatherYears: readonly SiteWeather[] = []): Scenario {
  const { soil, programme, ...common } = scenario;
  const edited = editComparison({ ...common, remark: "", soils: [soil], programmes: [programme] }, draw, weatherYears);
  return { ...scenario, block: edited.block, weather: edited.weather, soil: edited.soils[0] };
}

function quantiles(drawn: readonly Trace[][], p: number, share: number, hours: number): Float64Array {
  const out = new Float64Array(hours);
  const sorted = new Float64Array(drawn.length);
  for (let hour = 0; hour < hours; hour++) {
    drawn.forEach((traces, m) => {
      sorted[m] = traces[p].tensionKPa[hour];
    });
    sorted.sort();
    const place = share * (sorted.length - 1);
    const low = Math.floor(place);
    const high = Math.ceil(place);
    out[hour] = sorted[low] + (place - low) * (sorted[high] - sorted[low]);
  }
  return out;
}
