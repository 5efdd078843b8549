// Writes readings.csv: what two invented probes of the demo block would read if its soil conducted 0.7 times as well and its trees wanted 1.1
// times as much as the scenario says, with noise of 0.012 m3/m3 that hangs together by 0.5 from reading to reading. Build first.
//   node data/demo/make-readings.mjs
import { readFileSync, writeFileSync } from "node:fs";
import seedrandom from "seedrandom";
import { sensorTraces } from "../../packages/rootledger/dist/advise/index.js";
import { editComparison } from "../../packages/rootledger/dist/chance/index.js";
import { parseScenario } from "../../packages/rootledger/dist/scenario/index.js";

const days = 60;
const here = new URL(".", import.meta.url);
const text = (name) => readFileSync(new URL(name, here), "utf8");
const parsed = parseScenario(JSON.parse(text("scenario.json")), { "weather.csv": text("weather.csv") });
if (!parsed.ok) throw new Error("the demo has faults");
const { soil, programme, ...common } = parsed.scenario;
const draw = { member: 0, ids: ["k-sat", "kcb"], values: Float64Array.of(0.7, 1.1) };
const edited = editComparison({ ...common, remark: "", soils: [soil], programmes: [programme] }, draw);
const scenario = { ...parsed.scenario, block: edited.block, soil: edited.soils[0] };
const places = [15, 40].map((depthCm) => ({ depthCm, fromLineCm: 10 }));
const chance = seedrandom.alea("readings");
const normal = () => Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
const start = Date.parse(`${scenario.season.startDate}T00:00:00Z`);
const rows = sensorTraces(scenario, { places, fromHour: 0, hours: days * 24 }).flatMap(({ place, theta }) => {
  let noise = 0.012 * normal();
  return Array.from({ length: days * 2 }, (_, k) => {
    const hour = 12 * k + 6;
    noise = 0.5 * noise + Math.sqrt(0.75) * 0.012 * normal();
    const time = new Date(start + hour * 3_600_000).toISOString().slice(0, 16);
    return `${time},${place.depthCm},${place.fromLineCm},${(theta[hour - 1] + noise).toFixed(4)}`;
  });
});
writeFileSync(new URL("readings.csv", here), `time,depthCm,fromLineCm,theta\n${rows.join("\n")}\n`);
