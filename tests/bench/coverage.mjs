// Does the 90 % band hold 86 to 94 % of truths drawn from the same priors? Bands come from one seed, truths from another; every
// measure of every arm and every paired difference is asked. `node tests/bench/coverage.mjs`, or with `--json`.
//   --members N   members of the bands, default 1200: beyond 1,024 the bands come from bins
//   --truths N    truths, default 1200
//   --days N      length of the season, default 3
//   --seed S      default 1: the bands' seed is `band S`, the truths' `truth S`
import { parseArgs } from "node:util";
import { createSketch, createTally, defaultPriors, layoutOf, memberRun, outcomeOf } from "rootledger/chance";
import { demoComparison, priorsOf } from "./demo-comparison.mjs";

const { values: options } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    members: { type: "string", default: "1200" },
    truths: { type: "string", default: "1200" },
    days: { type: "string", default: "3" },
    seed: { type: "string", default: "1" },
  },
});
const [members, truths, days] = [options.members, options.truths, options.days].map(Number);
const held = [0.86, 0.94];
/** A share this large of equal values is a heap: where a band ends on one, ties decide and no share near 0.90 can be had. */
const heap = 0.02;

const comparison = demoComparison({
  ...{ soils: ["sand"], programmes: [0, 1], days },
  start: { kind: "same-state", tensionKPa: 10 },
});
const bandPlan = priorsOf(defaultPriors, comparison, `band ${options.seed}`);
const truthPlan = priorsOf(defaultPriors, comparison, `truth ${options.seed}`);
const layout = layoutOf(bandPlan);
const tally = createTally(layout);
const runBand = memberRun(bandPlan);
for (let member = 0; member < members; member++) tally.add(outcomeOf(runBand, member));
const { values, pairs, failed } = tally.plain();
const sketches = [...values, ...pairs.map(({ difference }) => difference)];
const bands = sketches.map((sketch) => createSketch(sketch).band(0.05));

const runTruth = memberRun(truthPlan);
const seen = bands.map(() => new Float64Array(truths));
for (let truth = 0; truth < truths; truth++) {
  const numbers = runTruth(truth);
  seen.forEach((column, i) => {
    column[truth] = numbers[i < values.length ? i : values.length + 2 * (i - values.length)];
  });
}

/** Of both the truths and the band's own ends, each a share of independent draws: 0.9 x 0.1 (1 / truths + 1 / members). */
const standardError = Math.sqrt(0.09 * (1 / truths + 1 / members));
const answers = bands.map((band, i) => {
  const column = seen[i];
  const counts = new Map();
  for (const value of column) counts.set(value, (counts.get(value) ?? 0) + 1);
  const most = Math.max(...counts.values());
  const heaped = most > 1 && most / truths > heap;
  const inside = column.filter((value) => value >= band.low && value <= band.high).length / truths;
  return { name: nameOf(i), inside, heaped, pass: inside >= held[0] && inside <= held[1] };
});
const asked = answers.filter(({ heaped }) => !heaped);
const mean = asked.reduce((sum, { inside }) => sum + inside, 0) / asked.length;
const report = { members, truths, days, failed, standardError, held, mean, answers };
console.log(options.json ? JSON.stringify(report, null, 2) : table());
if (!options.json && asked.some(({ pass }) => !pass)) process.exitCode = 1;

function nameOf(i) {
  const { arms, measures, trees, differences } = layout;
  if (i >= values.length) {
    const { soil, from, to, measureId } = differences[i - values.length];
    return `${soil}: ${from} -> ${to}, ${measureId}`;
  }
  const arm = arms[Math.floor(i / (measures.length * trees.length))];
  return `${arm.soil}: ${arm.programme}, ${measures[Math.floor(i / trees.length) % measures.length].id}`;
}

function table() {
  const line = ({ name, inside, heaped, pass }) =>
    `${(100 * inside).toFixed(1).padStart(6)} %  ${heaped ? "heap" : pass ? "holds" : "MISSES"}  ${name}`;
  return [
    `90 % bands of ${members} members (${failed} failed), ${truths} truths, ${days} days, the demo's sand, weekly and daily`,
    `asked: ${100 * held[0]} to ${100 * held[1]} %; standard error of each share ${(100 * standardError).toFixed(1)} %`,
    ...answers.map(line),
    `mean of the ${asked.length} without heaps: ${(100 * mean).toFixed(2)} %; least ${least(asked, Math.min)} %, most ${least(asked, Math.max)} %`,
    "heap: more than 2 % of the truths are equal (nothing applied by chance, 0 h, 0 L), so ties decide",
  ].join("\n");
}

function least(list, end) {
  return (100 * end(...list.map(({ inside }) => inside))).toFixed(1);
}
