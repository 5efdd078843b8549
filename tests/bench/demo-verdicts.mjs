// What the demo says of litres below roots on sand, over draws: weekly to daily, and daily to four pulses; by the fast engine over the
// season and over 14 days, and by the slow one over the same 14 days. `node tests/bench/demo-verdicts.mjs`, or with `--json`.
//   --members N   of the fast engine, default 200
//   --slow N      members of the slow engine, default 5; minutes each
//   --workers N   default the number of cores
import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { defaultPriors, ensemble } from "rootledger/chance";
import { nodeWorkers } from "../../packages/cli/dist/node-workers.js";
import { demoComparison, priorsOf } from "./demo-comparison.mjs";

const { values: options } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    members: { type: "string", default: "200" },
    slow: { type: "string", default: "5" },
    workers: { type: "string", default: String(availableParallelism()) },
  },
});
const sand = { soils: ["sand"], programmes: [0, 1, 2] };
const fortnight = { ...sand, days: 14, start: { kind: "same-state", tensionKPa: 10 } };
const cases = [
  {
    name: "fast engine, 84 days, settled",
    comparison: demoComparison({ ...sand, days: 84 }),
    members: options.members,
  },
  { name: "fast engine, 14 days", comparison: demoComparison(fortnight), members: options.members },
  {
    name: "slow engine, the same 14 days and draws",
    comparison: { ...demoComparison(fortnight), engine: "richards" },
    members: options.slow,
  },
];
const found = [];
for (const { name, comparison, members } of cases) {
  if (Number(members) === 0) continue;
  const plan = priorsOf(defaultPriors, comparison, "1");
  const result = await ensemble(plan, {
    members: Number(members),
    executor: nodeWorkers(plan, Number(options.workers)),
    onProgress: (done, all) => {
      if (name.startsWith("slow")) process.stderr.write(`${name}: ${done} of ${all} members done\n`);
    },
  });
  const pairs = [
    [0, 1],
    [1, 2],
  ].map(([a, b]) => {
    const [from, to] = [comparison.programmes[a].name, comparison.programmes[b].name];
    const { low, median, high, floor, risesShare, fallsShare, verdict } = result.differences.find(
      (d) => d.measureId === "below-roots" && d.from === from && d.to === to,
    );
    return { from, to, low, median, high, floor, risesShare, fallsShare, verdict };
  });
  found.push({ name, finished: result.finished, failed: result.failed, pairs });
}
if (options.json) console.log(JSON.stringify(found, null, 2));
else {
  for (const { name, finished, failed, pairs } of found) {
    console.log(`${name}: ${finished} members, ${failed} failed; litres per tree below roots`);
    for (const { from, to, low, median, high, floor, verdict } of pairs) {
      const [a, b, c, d] = [low, median, high, floor].map((litres) => litres.toFixed(0));
      console.log(`  ${from} -> ${to}: ${b} (${a} to ${c}), floor ${d}: ${verdict}`);
    }
  }
}
