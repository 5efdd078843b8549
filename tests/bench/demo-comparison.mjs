// The demo's comparison, for scripts that run it: some of its soils and programmes, over some of its days.
import { readFileSync } from "node:fs";
import { parseComparison } from "rootledger/scenario";

const demo = new URL("../../data/demo/", import.meta.url);

export function demoComparison({ soils, programmes, startDate, days, start }) {
  const file = JSON.parse(readFileSync(new URL("comparison.json", demo), "utf8"));
  const parsed = parseComparison(
    {
      ...file,
      season: { startDate: startDate ?? file.season.startDate, days },
      soils: file.soils.filter(({ name }) => soils.includes(name)),
      programmes: file.programmes.filter((_, i) => programmes.includes(i)),
      start: start ?? file.start,
    },
    { "weather.csv": readFileSync(new URL("weather.csv", demo), "utf8") },
  );
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.comparison;
}

/** A plan over the default priors. */
export function priorsOf(defaultPriors, comparison, seed, trees = ["mean"]) {
  return {
    comparison,
    trees,
    draws: { kind: "priors", priors: defaultPriors(comparison), seed },
    weatherYears: [],
  };
}
