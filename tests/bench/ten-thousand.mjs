// An ensemble past one sitting: 10,000 members, two programmes of the demo on sand, 120 days, both trees, in shards that are then
// merged. Prints time, members per second and the peak memory of the process with all its workers. What is in the folder from
// an earlier, killed run is not run again; then the speed is of what was left.
//   node tests/bench/ten-thousand.mjs [--members N --days N --shards N --workers N --folder out/ten-thousand --json]
import { copyFileSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { availableParallelism, cpus } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { nodeWorkers } from "../../packages/cli/dist/node-workers.js";
import { main } from "../../packages/cli/dist/run.js";
import { nodeDisk } from "../../packages/cli/dist/shards/node-disk.js";

const { values: options } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    members: { type: "string", default: "10000" },
    days: { type: "string", default: "120" },
    shards: { type: "string", default: "20" },
    workers: { type: "string", default: String(availableParallelism()) },
    folder: { type: "string", default: fileURLToPath(new URL("../../out/ten-thousand", import.meta.url)) },
  },
});
/** Own budget, no source. */
const mostMb = 500;
const megabyte = 1e6;
const { folder, members, workers } = options;
const demo = new URL("../../data/demo/", import.meta.url);
const shardFolder = join(folder, "shards");
mkdirSync(folder, { recursive: true });
const file = JSON.parse(readFileSync(new URL("comparison.json", demo), "utf8"));
const comparison = {
  ...file,
  season: { startDate: "2025-10-15", days: Number(options.days) },
  soils: file.soils.filter(({ name }) => name === "sand"),
  programmes: file.programmes.slice(1, 3),
};
writeFileSync(join(folder, "comparison.json"), JSON.stringify(comparison));
copyFileSync(new URL("weather.csv", demo), join(folder, "weather.csv"));

const quiet = { readFile: async (path) => readFileSync(path, "utf8"), readBytes: async (path) => readFileSync(path) };
const io = { ...quiet, nowMs: () => performance.now(), workers: nodeWorkers, disk: nodeDisk };
let answer = "";
const command = async (...argv) => {
  answer = "";
  const stdout = (text) => {
    answer += text;
  };
  const code = await main(argv, { ...io, stdout, stderr: (text) => process.stderr.write(text) });
  if (code !== 0) process.exit(code);
};

const peakMb = () => (process.resourceUsage().maxRSS * 1024) / megabyte;
const cpuS = () => (process.cpuUsage().user + process.cpuUsage().system) / 1e6;
const began = performance.now();
for (let shard = 1; shard <= Number(options.shards); shard++) {
  const asked = ["--members", members, "--seed", "ten-thousand", "--shard", `${shard}/${options.shards}`];
  await command("ensemble", join(folder, "comparison.json"), ...asked, "--out", shardFolder, "--workers", workers);
  process.stderr.write(
    `${((performance.now() - began) / 1000).toFixed(0)} s, peak ${peakMb().toFixed(0)} MB: ${answer}`,
  );
}
const runS = (performance.now() - began) / 1000;
const runCpuS = cpuS();
const runPeakMb = peakMb();
await command("merge", shardFolder, "--out", join(folder, "merged"), "--json");
const { finished, failed } = JSON.parse(answer);
const storedMb = (where) =>
  readdirSync(where).reduce((sum, name) => sum + statSync(join(where, name)).size, 0) / megabyte;
const found = {
  machine: { cpu: cpus()[0].model.trim(), cores: cpus().length, node: process.version },
  ...{ members: Number(members), finished, failed, runS, runCpuS, perSecond: Number(members) / runS },
  ...{ mergeS: (performance.now() - began) / 1000 - runS, runPeakMb, peakMb: peakMb(), mostMb },
  ...{ shardsMb: storedMb(shardFolder), mergedMb: storedMb(join(folder, "merged")) },
  pass: failed === 0 && peakMb() < mostMb,
};
console.log(options.json ? JSON.stringify(found) : JSON.stringify(found, null, 2));
process.exitCode = found.pass ? 0 : 1;
