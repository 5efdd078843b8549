import { simulate } from "rootledger";
import { refinedRichardsEngine } from "rootledger/water";
import { bothEnginesCases, days, measuresOf, scenarioOf } from "./both-engines-case.js";

const provenance =
  "Richards engine of this project, referee's grid, on its default class curves: block 6 x 4 m, two lines at 0.5 m, 20 emitters a tree, 133 L per tree and day, ET0 6.2 mm, Kcb 0.8, no rain, 14 days from 10 kPa. Not outside truth: it says how far the fast engine is from the slow one. Made by both-engines-make.ts.";

export interface KeptCase {
  readonly id: string;
  readonly residualFraction: number;
  readonly richards: Readonly<Record<string, number>>;
}

/** Runs the slow engine on every case that is not kept yet; about a quarter of an hour for all. */
export function makeBothEngines(kept: readonly KeptCase[], save: (file: unknown) => void): void {
  const cases = [...kept];
  for (const c of bothEnginesCases) {
    if (cases.some((k) => k.id === c.id)) continue;
    const result = simulate(scenarioOf(c), { engine: refinedRichardsEngine });
    if (result.status.kind !== "finished") throw new Error(`${c.id}: ${JSON.stringify(result.status)}`);
    cases.push({ id: c.id, residualFraction: result.ledger.residualFraction[0], richards: measuresOf(result) });
    save({ provenance, days, cases });
  }
}
