// Does the 90 % band hold 86 to 94 % of truths drawn from the same priors? Bands come from one seed, truths from another; every
// measure of every arm and every paired difference is asked. Asked both ways, bands of the one sample against the other and the
// reverse: a band end that is too far in by the luck of one sample is too far out for the other, so their mean shows whether the
// bands themselves are too narrow, with an error far below that of one way. `node tests/bench/coverage.mjs`, or with `--json`.
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
const plans = ["band", "truth"].map((name) => priorsOf(defaultPriors, comparison, `${name} ${options.seed}`));
const layout = layoutOf(plans[0]);
const samples = plans.map((plan, i) => sampleOf(plan, i === 0 ? members : truths));
const [bands, reversed] = samples.map(({ bands: found }) => found);
const failed = samples[0].failed + samples[1].failed;
const valueCount = layout.arms.length * layout.measures.length * layout.trees.length;

/** A sample of members: their bands as an ensemble finds them, and every answer of every member. */
function sampleOf(plan, count) {
  const tally = createTally(layout);
  const run = memberRun(plan);
  const rows = [];
  for (let member = 0; member < count; member++) {
    const outcome = outcomeOf(run, member);
    tally.add(outcome);
    if ("values" in outcome) rows.push(outcome.values);
  }
  const { values, pairs, failed: lost } = tally.plain();
  const sketches = [...values, ...pairs.map(({ difference }) => difference)];
  const place = (i) => (i < values.length ? i : values.length + 2 * (i - values.length));
  return {
    failed: lost,
    bands: sketches.map((sketch) => createSketch(sketch).band(0.05)),
    columns: sketches.map((_, i) => Float64Array.from(rows, (row) => row[place(i)])),
  };
}

const shareInside = (column, { low, high }) =>
  column.filter((value) => value >= low && value <= high).length / column.length;

/** Of both the truths and the band's own ends, each a share of independent draws: 0.9 x 0.1 (1 / truths + 1 / members). */
const standardError = Math.sqrt(0.09 * (1 / truths + 1 / members));
const answers = bands.map((band, i) => {
  const [asBands, asTruths] = samples.map(({ columns }) => columns[i]);
  const counts = new Map();
  for (const value of asTruths) counts.set(value, (counts.get(value) ?? 0) + 1);
  const most = Math.max(...counts.values());
  const heaped = most > 1 && most / truths > heap;
  const inside = shareInside(asTruths, band);
  const turned = shareInside(asBands, reversed[i]);
  const both = (inside + turned) / 2;
  return { name: nameOf(i), inside, turned, both, heaped, pass: both >= held[0] && both <= held[1] };
});
const asked = answers.filter(({ heaped }) => !heaped);
const mean = asked.reduce((sum, { both }) => sum + both, 0) / asked.length;
const report = { members, truths, days, failed, standardError, held, mean, answers };
console.log(options.json ? JSON.stringify(report, null, 2) : table());
if (!options.json && asked.some(({ pass }) => !pass)) process.exitCode = 1;

function nameOf(i) {
  const { arms, measures, trees, differences } = layout;
  if (i >= valueCount) {
    const { soil, from, to, measureId } = differences[i - valueCount];
    return `${soil}: ${from} -> ${to}, ${measureId}`;
  }
  const arm = arms[Math.floor(i / (measures.length * trees.length))];
  return `${arm.soil}: ${arm.programme}, ${measures[Math.floor(i / trees.length) % measures.length].id}`;
}

function table() {
  const percent = (share) => (100 * share).toFixed(1).padStart(6);
  const line = ({ name, inside, turned, both, heaped, pass }) =>
    `${percent(both)} % (${percent(inside)}, ${percent(turned)})  ${heaped ? "heap" : pass ? "holds" : "MISSES"}  ${name}`;
  return [
    `90 % bands of ${members} members (${failed} failed), ${truths} truths, ${days} days, the demo's sand, weekly and daily`,
    `asked: ${100 * held[0]} to ${100 * held[1]} % of the mean of both ways; standard error of one way ${(100 * standardError).toFixed(1)} %`,
    ...answers.map(line),
    `mean of the ${asked.length} without heaps: ${(100 * mean).toFixed(2)} %; least ${least(asked, Math.min)} %, most ${least(asked, Math.max)} %`,
    "heap: more than 2 % of the truths are equal (nothing applied by chance, 0 h, 0 L), so ties decide",
  ].join("\n");
}

function least(list, end) {
  return (100 * end(...list.map(({ both }) => both))).toFixed(1);
}
