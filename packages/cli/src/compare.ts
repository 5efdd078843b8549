import { compare, comparesPulses } from "rootledger/compare";
import { inputsKey, parseComparison } from "rootledger/scenario";
import { armNames, runArms } from "./arms.js";
import { runEnsemble } from "./ensemble.js";
import { ensembleAsked } from "./ensemble-flags.js";
import { readPlan } from "./ensemble-plan.js";
import { exit, type Io } from "./io.js";
import { armsText } from "./print/arms.js";
import { comparisonText } from "./print/comparison.js";
import { ensembleText } from "./print/ensemble.js";
import { jsonText } from "./print/json.js";
import { armsTable, ensembleTable, measuresTable } from "./print/measure-tables.js";
import { tableText } from "./print/table.js";
import { progress } from "./progress.js";
import { readInput } from "./read-input.js";
import { misused, sound } from "./refused.js";
import type { Asked } from "./run.js";
import { words } from "./words.js";

/** `rootledger compare FILE`. */
export async function compareCommand({ file, output, engine, flags }: Asked, io: Io): Promise<number> {
  const { arms, keep, ...drawn } = flags;
  const asked = Object.keys(drawn).length === 0 ? undefined : ensembleAsked(drawn);
  const names = arms === undefined ? undefined : armNames(arms);
  const misuse =
    asked !== undefined && drawn.members === undefined && drawn.draws === undefined
      ? words.membersNeeded
      : keep !== undefined && arms === undefined
        ? words.keepNeedsArms
        : [asked, names].find((one) => typeof one === "string");
  if (typeof misuse === "string" || typeof asked === "string" || typeof names === "string") throw misused(`${misuse}`);
  const input = sound(await readInput(file, io));
  const parsed = sound(parseComparison(input.value, input.files));
  const { defaultsUsed, notes } = parsed;
  const comparison = engine === undefined ? parsed.comparison : { ...parsed.comparison, engine };
  const read = asked === undefined ? undefined : sound(await readPlan(comparison, input.value, asked, io));
  const tell = progress(io);
  const result = compare(comparison, { defaultsUsed, onArm: (done, all) => tell(`${done} of ${all} runs done`) });
  const draws =
    asked === undefined || read === undefined
      ? undefined
      : await runEnsemble(read.plan, read.members, asked.workers, io);
  const beside = arms === undefined ? undefined : await runArms(comparison, result, names, keep, io);
  if (output === "json") {
    const more = { ...(draws === undefined ? {} : { ensemble: draws }), ...(beside === undefined ? {} : { beside }) };
    io.stdout(jsonText({ ...result, inputsKey: inputsKey(comparison), notes, ...more }));
  } else if (output !== "table") {
    const table =
      beside !== undefined ? armsTable(beside) : draws === undefined ? measuresTable(result) : ensembleTable(draws);
    io.stdout(tableText(table, output));
  } else {
    io.stdout(comparisonText(result, comparison.weather.name, notes));
    if (beside !== undefined) io.stdout(armsText(beside));
    else if (comparesPulses(result)) io.stdout(`\n${words.armsHint}\n`);
    if (draws !== undefined) io.stdout(`\n${ensembleText(draws)}`);
  }
  return exit.done;
}
