import { fileURLToPath } from "node:url";
import { cruise, type ICruiseResult } from "dependency-cruiser";
import extractOptions from "dependency-cruiser/config-utl/extract-depcruise-options";

export const root: string = fileURLToPath(new URL("../..", import.meta.url)).replace(/\/$/, "");
export const sources: readonly string[] = ["packages/rootledger/src", "packages/cli/src", "playground/src"];

const configFile = `${root}/.dependency-cruiser.mjs`;

/** Names of the project's import rules. */
export async function ruleNames(): Promise<string[]> {
  const { ruleSet } = await extractOptions(configFile);
  return (ruleSet?.forbidden ?? []).map(({ name }) => name ?? "");
}

/** Cruises the source folders below a base folder by the project's import rules. */
export async function cruiseTree(baseDir: string): Promise<ICruiseResult> {
  const options = await extractOptions(configFile);
  const { output } = await cruise([...sources], { ...options, baseDir });
  if (typeof output === "string") throw new Error("cruise requires the result as an object: got text");
  return output;
}

/** What a cruise found, as lines "file: rule". The summary names a circle once, so the modules themselves are read. */
export function breaches(result: ICruiseResult): string[] {
  return result.modules.flatMap(({ source, rules = [], dependencies }) =>
    [...rules, ...dependencies.flatMap(({ rules: broken = [] }) => broken)].map(({ name }) => `${source}: ${name}`),
  );
}
