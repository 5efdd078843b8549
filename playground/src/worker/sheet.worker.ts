import { NothingToWater, sheet } from "rootledger/advise";
import { defaultPriors } from "rootledger/chance";
import { parseScenario } from "rootledger/scenario";
import weatherText from "../../../data/demo/weather.csv?raw";
import type { SheetMessage, SheetRequest } from "./sheet-protocol.js";

/**
 * Draws behind the bands: a few for a first sheet to look at, then as many as it is printed with: twice as many take twice as
 * long, and a band end then rests on two. Our choice.
 */
const stages = [2, 20];

self.onmessage = ({ data: { file, files, day } }: MessageEvent<SheetRequest>) => {
  try {
    const parsed = parseScenario(file, { "weather.csv": weatherText, ...files });
    if (!parsed.ok) {
      post({ kind: "faults", faults: parsed.faults });
      return;
    }
    const { scenario } = parsed;
    const priors = defaultPriors({ block: scenario.block, soils: [scenario.soil] });
    for (const members of stages) {
      const made = sheet(scenario, { day, draws: { source: { kind: "priors", priors, seed: "1" }, members } });
      post({ kind: "sheet", sheet: made, members, all: stages.at(-1)! });
    }
  } catch (error) {
    if (error instanceof NothingToWater) post({ kind: "no-run" });
    else post({ kind: "failed", message: error instanceof Error ? error.message : String(error) });
  }
};

function post(message: SheetMessage): void {
  self.postMessage(message);
}
