/** A small tree that obeys every rule: file and its text. */
export const lawful: Readonly<Record<string, string>> = {
  "packages/rootledger/src/index.ts": 'export { simulate } from "./scenario/run.js";\n',
  "packages/rootledger/src/units.ts": "export const hoursPerDay = 24;\n",
  "packages/rootledger/src/version.ts": 'export const version = "0";\n',
  "packages/rootledger/src/numeric/bisect.ts": "export const bisect = 1;\n",
  "packages/rootledger/src/ground/index.ts": 'export { curve } from "./curve.js";\n',
  "packages/rootledger/src/ground/curve.ts":
    'import { bisect } from "../numeric/bisect.js";\nimport { hoursPerDay } from "../units.js";\nexport const curve = bisect + hoursPerDay;\nexport type Curve = number;\n',
  "packages/rootledger/src/weather/read.ts": 'import { tsvParse } from "d3-dsv";\nexport const read = tsvParse;\n',
  "packages/rootledger/src/tree/roots.ts": "export const roots = 1;\n",
  "packages/rootledger/src/lines/layout.ts": "export const layout = 1;\n",
  "packages/rootledger/src/water/engine.ts":
    'import { curve } from "../ground/curve.js";\nimport { roots } from "../tree/roots.js";\nexport const engine = curve + roots;\n',
  "packages/rootledger/src/programme/events.ts":
    'import { layout } from "../lines/layout.js";\nexport const events = layout;\n',
  "packages/rootledger/src/scenario/index.ts": 'export { simulate } from "./run.js";\n',
  "packages/rootledger/src/scenario/run.ts":
    'import { events } from "../programme/events.js";\nimport { engine } from "../water/engine.js";\nexport const simulate = engine + events;\n',
  "packages/rootledger/src/scenario/parse.ts": 'import { z } from "zod";\nexport const parse = z;\n',
  "packages/rootledger/src/compare/compare.ts":
    'import { simulate } from "../scenario/run.js";\nexport const compare = simulate;\n',
  "packages/rootledger/src/steps/step.ts":
    'import { simulate } from "../scenario/run.js";\nexport const step = simulate;\n',
  "packages/rootledger/src/calibrate/fit.ts":
    'import { start } from "../advise/start.js";\nexport const fit = start;\n',
  "packages/rootledger/src/advise/start.ts":
    'import { simulate } from "../scenario/run.js";\nexport const start = simulate;\n',
  "packages/rootledger/src/chance/draw.ts":
    'import { compare } from "../compare/compare.js";\nexport const draw = compare;\n',
  "packages/rootledger/src/words/sheet.ts":
    'import { start } from "../advise/start.js";\nexport const sheet = start;\n',
  "packages/cli/src/main.ts":
    'import { simulate } from "rootledger";\nimport { readFile } from "node:fs";\nexport const main = [simulate, readFile];\n',
  "playground/src/main.ts": 'import { page } from "./pages/page.js";\nexport const main = page;\n',
  "playground/src/pages/page.ts":
    'import { chart } from "../charts/chart.js";\nimport { store } from "../state/store.js";\nexport const page = [chart, store];\n',
  "playground/src/state/store.ts": "export const store = 1;\n",
  "playground/src/state/link.ts": "export const link = 1;\n",
  "playground/src/charts/chart.ts":
    'import { html } from "lit";\nimport type { simulate } from "rootledger";\nexport type S = typeof simulate;\nexport const chart = html;\n',
  "playground/src/fields/field.ts": 'import { html } from "lit";\nexport const field = html;\n',
  "playground/src/worker/model.ts": 'import { simulate } from "rootledger";\nexport const model = simulate;\n',
};

interface Breach {
  /** The rule that has to catch it. */
  readonly rule: string;
  /** The file it is planted in, at its end. */
  readonly file: string;
  readonly text: string;
}

const uses = (rule: string, file: string, specifier: string): Breach => ({
  rule,
  file,
  text: `import * as planted from "${specifier}";\nexport { planted };\n`,
});

/** At least one breach of every rule. */
export const planted: readonly Breach[] = [
  uses("units-imports", "packages/rootledger/src/units.ts", "./numeric/bisect.js"),
  uses("version-imports", "packages/rootledger/src/version.ts", "./units.js"),
  uses("numeric-imports", "packages/rootledger/src/numeric/bisect.ts", "../units.js"),
  uses("ground-imports", "packages/rootledger/src/ground/curve.ts", "../weather/read.js"),
  uses("weather-imports", "packages/rootledger/src/weather/read.ts", "../tree/roots.js"),
  uses("tree-imports", "packages/rootledger/src/tree/roots.ts", "../lines/layout.js"),
  uses("lines-imports", "packages/rootledger/src/lines/layout.ts", "../water/engine.js"),
  uses("water-imports", "packages/rootledger/src/water/engine.ts", "../scenario/run.js"),
  uses("programme-imports", "packages/rootledger/src/programme/events.ts", "../scenario/run.js"),
  uses("scenario-imports", "packages/rootledger/src/scenario/parse.ts", "../compare/compare.js"),
  uses("words-imports", "packages/rootledger/src/words/sheet.ts", "../scenario/run.js"),
  uses("chance-imports", "packages/rootledger/src/chance/draw.ts", "../index.js"),
  uses("compare-imports", "packages/rootledger/src/compare/compare.ts", "../index.js"),
  uses("advise-imports", "packages/rootledger/src/advise/start.ts", "../index.js"),
  uses("steps-imports", "packages/rootledger/src/steps/step.ts", "../compare/compare.js"),
  uses("calibrate-imports", "packages/rootledger/src/calibrate/fit.ts", "../words/sheet.js"),
  {
    rule: "water-imports",
    file: "packages/rootledger/src/water/engine.ts",
    text: 'import type { parse } from "../scenario/parse.js";\nexport type Parse = typeof parse;\n',
  },
  uses("known-parts", "packages/rootledger/src/sundries/odds.ts", "../units.js"),
  uses("zod-owner", "packages/rootledger/src/water/engine.ts", "zod"),
  uses("d3-dsv-owner", "packages/rootledger/src/scenario/parse.ts", "d3-dsv"),
  uses("seedrandom-owner", "packages/rootledger/src/compare/compare.ts", "seedrandom"),
  uses("pure-library", "packages/rootledger/src/scenario/parse.ts", "node:fs"),
  uses("pure-library", "packages/rootledger/src/compare/compare.ts", "lit"),
  uses("simulate-without-zod", "packages/rootledger/src/scenario/run.ts", "./parse.js"),
  uses("public-names", "packages/cli/src/main.ts", "rootledger/ground/curve"),
  uses("by-package-name", "packages/cli/src/main.ts", "../../rootledger/src/index.js"),
  uses("cli-apart", "playground/src/pages/page.ts", "../../../packages/cli/src/main.js"),
  uses("playground-apart", "packages/cli/src/main.ts", "../../../playground/src/state/store.js"),
  uses("worker-without-screen", "playground/src/worker/model.ts", "lit"),
  uses("worker-without-screen", "playground/src/worker/model.ts", "../charts/chart.js"),
  uses("drawing-without-state", "playground/src/charts/chart.ts", "../state/store.js"),
  uses("drawing-without-state", "playground/src/fields/field.ts", "../state/link.js"),
  uses("drawing-without-state", "playground/src/charts/chart.ts", "../worker/model.js"),
  uses("drawing-without-model", "playground/src/charts/chart.ts", "rootledger/ground"),
  uses("tests-apart", "packages/cli/src/main.ts", "../../../tests/near.js"),
  uses("no-circles", "playground/src/state/link.ts", "../pages/page.js"),
  uses("no-circles", "playground/src/state/store.ts", "./link.js"),
  uses("resolvable", "packages/cli/src/main.ts", "./nowhere.js"),
];
