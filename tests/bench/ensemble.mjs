// Speed and memory of an ensemble: two programmes of the demo on sand, 200 members, 120 days; then the tally alone at 200 and
// 5,000 made-up members, each in a process of its own with little room for garbage, so that its peak is what it needs. `node tests/bench/ensemble.mjs`, or with `--json`.
//   --members N --days N --workers N   default 200, 120 and the number of cores
import { execFileSync } from "node:child_process";
import { availableParallelism, cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { defaultPriors, ensemble, layoutOf, oneThread, tallyEnsemble } from "rootledger/chance";
import { nodeWorkers } from "../../packages/cli/dist/node-workers.js";
import { demoComparison, priorsOf } from "./demo-comparison.mjs";

const { values: options } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    members: { type: "string", default: "200" },
    days: { type: "string", default: "120" },
    workers: { type: "string", default: String(availableParallelism()) },
    "made-up": { type: "string" },
  },
});
const days = Number(options.days);
/** Own budgets, no source: a minute of waiting; a tally that five thousand members make at most a quarter larger. */
const budgetMs = 60_000;
const mostGrowth = 1.25;
const megabyte = 1e6;

const comparison = demoComparison({ soils: ["sand"], programmes: [1, 2], startDate: "2025-10-15", days });
const plan = priorsOf(defaultPriors, comparison, "bench", ["mean", "under-fed"]);
if (options["made-up"] !== undefined) console.log(JSON.stringify(await madeUp(Number(options["made-up"]))));
else await main();

async function main() {
  const members = Number(options.members);
  const workers = Number(options.workers);
  const began = performance.now();
  const cpuBegan = process.cpuUsage();
  const { finished, failed } = await ensemble(plan, { members, executor: nodeWorkers(plan, workers) });
  const medianMs = performance.now() - began;
  const { user, system } = process.cpuUsage(cpuBegan);
  const peakMb = (process.resourceUsage().maxRSS * 1024) / megabyte;
  const [few, many] = [200, 5000].map((count) =>
    JSON.parse(
      execFileSync(
        process.execPath,
        ["--max-semi-space-size=1", fileURLToPath(import.meta.url), "--made-up", String(count), "--days", options.days],
        {
          encoding: "utf8",
        },
      ),
    ),
  );
  const growth = many.peakMb / few.peakMb;
  const cases = [
    {
      name: `ensemble, 2 programmes x 2 trees x ${members} members x ${days} d, ${workers} workers`,
      ...{ medianMs, spreadMs: 0, perSecond: members / (medianMs / 1000), budgetMs },
      ...{ cpuMs: (user + system) / 1000, peakMb, finished, failed },
      pass: medianMs <= budgetMs && failed === 0,
    },
    {
      name: "tally of 5,000 made-up members against 200: peak of the whole process",
      ...{ medianMs: many.tookMs, spreadMs: 0, perSecond: 5000 / (many.tookMs / 1000), budgetMs },
      ...{ few, many, growth, mostGrowth },
      pass: growth <= mostGrowth,
    },
  ];
  const machine = { cpu: cpus()[0].model.trim(), cores: cpus().length, node: process.version };
  if (options.json) {
    console.log(JSON.stringify({ machine, cases }, null, 2));
    return;
  }
  console.log(
    [
      `${machine.cpu}, ${machine.cores} cores, node ${machine.node}; once, no repeats; CPU: processor time of all threads`,
      `${cases[0].name}: ${(medianMs / 1000).toFixed(1)} s (CPU ${(cases[0].cpuMs / 1000).toFixed(1)} s), ${cases[0].perSecond.toFixed(1)} members/s, peak ${peakMb.toFixed(0)} MB, ${failed} failed`,
      ...[few, many].map(
        ({ members: count, peakMb: peak, heapMb, tookMs }) =>
          `tally of ${count} made-up members: peak ${peak.toFixed(0)} MB, of it the tally ${heapMb.toFixed(2)} MB, ${(tookMs / 1000).toFixed(2)} s`,
      ),
      `peak of 5,000 over peak of 200: ${growth.toFixed(2)}`,
    ].join("\n"),
  );
}

/** Members of made-up numbers, spread over a power of ten like real ones; what the tally alone holds, after collection. */
async function madeUp(members) {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc");
  const { size } = layoutOf(plan);
  const run = (member) => {
    const values = new Float64Array(size);
    for (let i = 0; i < size; i++) {
      const wave = Math.sin(12.9898 * (member + 1) + 78.233 * i) * 43758.5453;
      values[i] = i * 10 ** (wave - Math.floor(wave));
    }
    return values;
  };
  collect();
  const before = process.memoryUsage().heapUsed;
  const began = performance.now();
  const tally = await tallyEnsemble(plan, { members, executor: oneThread(run) });
  const tookMs = performance.now() - began;
  collect();
  const heapMb = (process.memoryUsage().heapUsed - before) / megabyte;
  const peakMb = (process.resourceUsage().maxRSS * 1024) / megabyte;
  return { members: tally.finished, heapMb, peakMb, tookMs };
}
