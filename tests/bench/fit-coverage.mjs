// How often the 90 % intervals of `calibrate` hold truths drawn from the priors, the model itself being right.
//   npm run build && node tests/bench/fit-coverage.mjs [truths]
// One block on clay loam watered every third day, two probes read twice a day over 40 days, noise of 0.012 m3/m3 that hangs together by 0.5.
import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { sensorTraces } from "rootledger/advise";
import { calibrate, dampedLeastSquares } from "rootledger/calibrate";
import { defaultPriors, drawMaker, editComparison } from "rootledger/chance";
import { parseScenario } from "rootledger/scenario";
import seedrandom from "seedrandom";

const truths = Number(process.argv[2] ?? 58);
const days = 40;
const noise = { deviation: 0.012, correlation: 0.5 };
const places = [15, 40].map((depthCm) => ({ depthCm, fromLineCm: 10 }));
const start = Date.UTC(2026, 0, 1);
const dateOf = (d) => new Date(start + d * 86_400_000).toISOString().slice(0, 10);
const weather = Array.from({ length: days }, (_, d) => `${dateOf(d)},6.2,0`);
const parsed = parseScenario(
  {
    ...{ format: 1, name: "block", season: { startDate: dateOf(0), days }, start: { kind: "same-state" } },
    block: {
      ...{ treeSpacingM: 4, rowSpacingM: 6 },
      tree: { name: "avocado", canopyDiameterM: 4.6, kcb: [{ date: dateOf(0), kcb: 0.8 }] },
      lines: { offsetsM: [-0.5, 0.5], emitterSpacingM: 0.4, emitterFlowLPerH: 1.6 },
    },
    soil: { name: "clay loam", horizons: [{ toCm: 100, texture: "clay loam" }] },
    weather: { name: "equal days", file: "d.csv", latitudeDeg: -33, elevationM: 320, et0Method: "given" },
    programme: { name: "every third day", runs: [{ start: "06:00", everyDays: 3, litresPerTree: 330 }] },
  },
  { "d.csv": ["date,et0Mm,rainMm", ...weather].join("\n") },
);
if (!parsed.ok) throw new Error("the block has faults");
const { soil, programme, ...common } = parsed.scenario;
const unknowns = defaultPriors({ block: common.block, soils: [soil] }).unknowns.filter(({ id }) =>
  ["k-sat", "kcb"].includes(id),
);
const drawOf = drawMaker({ kind: "priors", priors: { unknowns, correlations: [] }, seed: "cover" });
const held = unknowns.map(() => 0);
const widths = unknowns.map(() => 0);
for (let k = 0; k < truths; k++) {
  const draw = drawOf(k);
  const edited = editComparison({ ...common, remark: "", soils: [soil], programmes: [programme] }, draw);
  const truth = { ...parsed.scenario, block: edited.block, soil: edited.soils[0] };
  const chance = seedrandom.alea(`noise ${k}`);
  const normal = () => Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
  const readings = sensorTraces(truth, { places, fromHour: 0, hours: days * 24 }).flatMap(({ place, theta }) => {
    let miss = noise.deviation * normal();
    return Array.from({ length: days * 2 }, (_, i) => {
      const hour = 12 * i + 6;
      miss = noise.correlation * miss + Math.sqrt(1 - noise.correlation ** 2) * noise.deviation * normal();
      return { ...place, hour, theta: theta[hour - 1] + miss };
    });
  });
  const leastSquares = dampedLeastSquares(levenbergMarquardt);
  const how = { leastSquares, blockDays: 5, noiseTheta: noise.deviation };
  calibrate(parsed.scenario, readings, unknowns, how).unknowns.forEach(({ low, high, priorLow, priorHigh }, u) => {
    if (draw.values[u] >= low && draw.values[u] <= high) held[u]++;
    widths[u] += (high - low) / (priorHigh - priorLow) / truths;
  });
}
for (const [u, { id }] of unknowns.entries()) {
  console.log(`${id}: held in ${held[u]} of ${truths}, interval ${widths[u].toFixed(2)} of the prior's`);
}
