import { type AdviceQuestion, type AdviseOptions, advise, checkAdvice } from "rootledger/advise";
import { defaultPriors } from "rootledger/chance";
import type { Scenario } from "rootledger/scenario";
import { type AdviseAsked, adviseAsked } from "./advise-flags.js";
import { exit, type Io } from "./io.js";
import { adviceText } from "./print/advice.js";
import { adviceTable } from "./print/advice-table.js";
import { jsonText } from "./print/json.js";
import { tableText } from "./print/table.js";
import { progress } from "./progress.js";
import { readScenario } from "./read-scenario.js";
import { Refused, usable } from "./refused.js";
import type { Asked } from "./run.js";
import { words } from "./words.js";

/** `rootledger advise FILE`: programmes of the same water that are better than today's in something. */
export async function adviseCommand({ file, output, flags }: Asked, io: Io): Promise<number> {
  const asked = usable(adviseAsked(flags));
  const { scenario, defaultsUsed, notes } = await readScenario(file, io);
  const question = questionOf(scenario, asked);
  const workers = io.adviceWorkers?.(asked.workers);
  const tell = progress(io);
  const options: AdviseOptions = {
    ...(workers === undefined ? {} : { executorOf: workers.executorOf }),
    onProgress: (done, known) => tell(`${done} ${words.runsDone} ${known} ${words.knownSoFar}`),
  };
  try {
    const advice = await advise(question, options);
    const check =
      asked.checkDays === undefined
        ? undefined
        : await checkAdvice(question, advice, {
            days: asked.checkDays,
            onProgress: (done, all) => tell(`${words.slowEngine} ${done} ${words.of} ${all} h`),
          });
    if (output === "json") io.stdout(jsonText({ ...advice, ...(check && { check }), defaultsUsed, notes }));
    else
      io.stdout(
        output === "table" ? adviceText(advice, check, asked.language) : tableText(adviceTable(advice), output),
      );
    return exit.done;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new Refused(`${file}: ${error.message}\n`);
  } finally {
    workers?.close();
  }
}

function questionOf(scenario: Scenario, { members, seed, days, fromDay, water }: AdviseAsked): AdviceQuestion {
  const priors = defaultPriors({ block: scenario.block, soils: [scenario.soil] });
  return {
    ...{ scenario, water },
    ...(members === 0 ? {} : { draws: { source: { kind: "priors", priors, seed }, members } }),
    ...(days === undefined ? {} : { days }),
    ...(fromDay === undefined ? {} : { fromDay }),
  };
}
