import { decidedValve, seasonSolutes, youngTree } from "rootledger/scenario";

/** What the usual scene does not need: salt and nitrogen, young trees, rules and limits of the valve. Fetched when asked for. */
export const seasonExtras = { solutes: seasonSolutes, youngTree, valve: decidedValve };
