import { sheet } from "rootledger/advise";
import { defaultPriors } from "rootledger/chance";
import { parseScenario } from "rootledger/scenario";
import { sheetEnglish, sheetHtml, sheetPlain, sheetSpanish, sheetText } from "rootledger/words";
import { exit, type Io } from "./io.js";
import { faultLines } from "./print/faults.js";
import { jsonText } from "./print/json.js";
import { readInput } from "./read-input.js";
import type { Asked } from "./run.js";
import { sheetAsked } from "./sheet-flags.js";
import { words } from "./words.js";

/** `rootledger sheet FILE`: the grower's half page. */
export async function sheetCommand({ file, output, flags }: Asked, io: Io): Promise<number> {
  const asked = sheetAsked(flags);
  if (typeof asked === "string") {
    io.stderr(`${asked}; ${words.seeHelp}\n`);
    return exit.faults;
  }
  const input = await readInput(file, io);
  const parsed = input.ok ? parseScenario(input.value, input.files) : input;
  if (!parsed.ok) {
    io.stderr(faultLines(parsed.faults));
    return exit.faults;
  }
  const { scenario } = parsed;
  if (asked.day >= scenario.season.days) {
    io.stderr(`--day ${words.dayWithin} ${scenario.season.days - 1}; ${words.seeHelp}\n`);
    return exit.faults;
  }
  const priors = defaultPriors({ block: scenario.block, soils: [scenario.soil] });
  const draws = { source: { kind: "priors", priors, seed: asked.seed }, members: asked.members } as const;
  const answer = sheet(scenario, { day: asked.day, draws });
  if (output === "json") {
    io.stdout(jsonText(answer));
    return exit.done;
  }
  const text = sheetText(answer, asked.format.language === "es" ? sheetSpanish : sheetEnglish, asked.format);
  io.stdout(asked.html ? sheetHtml(text, asked.format.language) : sheetPlain(text));
  return exit.done;
}
