import { NothingToWater, type Sheet, sheet } from "rootledger/advise";
import { defaultPriors } from "rootledger/chance";
import { sheetEnglish, sheetHtml, sheetPlain, sheetSpanish, sheetText } from "rootledger/words";
import { exit, type Io } from "./io.js";
import { jsonText } from "./print/json.js";
import { readScenario } from "./read-scenario.js";
import { misused, usable } from "./refused.js";
import type { Asked } from "./run.js";
import { sheetAsked } from "./sheet-flags.js";
import { words } from "./words.js";

/** `rootledger sheet FILE`: the grower's half page. */
export async function sheetCommand({ file, output, flags }: Asked, io: Io): Promise<number> {
  const asked = usable(sheetAsked(flags));
  const { scenario } = await readScenario(file, io);
  if (asked.day >= scenario.season.days) throw misused(`--day ${words.dayWithin} ${scenario.season.days - 1}`);
  const priors = defaultPriors({ block: scenario.block, soils: [scenario.soil] });
  const draws = { source: { kind: "priors", priors, seed: asked.seed }, members: asked.members } as const;
  const answer = madeOf(() => sheet(scenario, { day: asked.day, draws }), asked.day);
  if (output === "json") {
    io.stdout(jsonText(answer));
    return exit.done;
  }
  const text = sheetText(answer, asked.format.language === "es" ? sheetSpanish : sheetEnglish, asked.format);
  io.stdout(asked.html ? sheetHtml(text, asked.format.language) : sheetPlain(text));
  return exit.done;
}

/** @throws Refused if no run falls into the days that the sheet would hold. */
function madeOf(make: () => Sheet, day: number): Sheet {
  try {
    return make();
  } catch (error) {
    if (error instanceof NothingToWater) throw misused(`--day ${day}: ${words.nothingToWater}`);
    throw error;
  }
}
