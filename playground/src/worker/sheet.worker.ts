import { sheet } from "rootledger/advise";
import { defaultPriors } from "rootledger/chance";
import { parseScenario } from "rootledger/scenario";
import weatherText from "../../../data/demo/weather.csv?raw";
import type { SheetMessage, SheetRequest } from "./sheet-protocol.js";

/** Draws behind the bands: twice as many take twice as long, and a band end then rests on two. Our choice. */
const members = 20;

self.onmessage = ({ data: { file, files, day } }: MessageEvent<SheetRequest>) => {
  try {
    const parsed = parseScenario(file, { "weather.csv": weatherText, ...files });
    if (!parsed.ok) {
      post({ kind: "faults", faults: parsed.faults });
      return;
    }
    const { scenario } = parsed;
    const priors = defaultPriors({ block: scenario.block, soils: [scenario.soil] });
    post({
      kind: "sheet",
      sheet: sheet(scenario, { day, draws: { source: { kind: "priors", priors, seed: "1" }, members } }),
    });
  } catch (error) {
    post({ kind: "failed", message: error instanceof Error ? error.message : String(error) });
  }
};

function post(message: SheetMessage): void {
  self.postMessage(message);
}
