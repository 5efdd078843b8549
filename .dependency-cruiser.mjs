// Who may import whom. Checked on the working tree by `npm run check` and, with planted breaches, by tests/imports.

const library = "^packages/rootledger/src";
const playground = "^playground/src";

/** Per folder or file of the library: what it may import from the library, besides itself. */
const may = {
  units: [],
  version: [],
  numeric: [],
  ground: ["numeric", "units"],
  weather: ["numeric", "units"],
  tree: ["numeric", "units"],
  lines: ["numeric", "units"],
  water: ["numeric", "units", "ground", "weather", "tree", "lines"],
  programme: ["numeric", "units", "ground", "weather", "tree", "lines", "water"],
  scenario: ["numeric", "units", "version", "ground", "weather", "tree", "lines", "water", "programme"],
  steps: ["numeric", "units", "version", "ground", "weather", "tree", "lines", "water", "programme", "scenario"],
  compare: ["numeric", "units", "version", "ground", "weather", "tree", "lines", "water", "programme", "scenario"],
  advise: [
    "numeric",
    "units",
    "version",
    "ground",
    "weather",
    "tree",
    "lines",
    "water",
    "programme",
    "scenario",
    "compare",
    "chance",
  ],
  calibrate: [
    "numeric",
    "units",
    "version",
    "ground",
    "weather",
    "tree",
    "lines",
    "water",
    "programme",
    "scenario",
    "compare",
    "chance",
    "advise",
  ],
  words: ["numeric", "units", "advise"],
  chance: [
    "numeric",
    "units",
    "version",
    "ground",
    "weather",
    "tree",
    "lines",
    "water",
    "programme",
    "scenario",
    "compare",
  ],
};

const parts = Object.keys(may);
const places = (names) => `${library}/(${names.join("|")})(/|\\.ts$)`;
const registry = (names) => `(^|/)(${names.join("|")})(/|$)`;

const betweenParts = parts.map((part) => ({
  name: `${part}-imports`,
  severity: "error",
  comment: `${part} may import ${may[part].join(", ") || "nothing of ours"}`,
  from: { path: places([part]) },
  to: { path: library, pathNot: places([part, ...may[part]]) },
}));

/** Runtime dependencies of the library and the parts that may import each. */
const owners = { zod: ["scenario"], "d3-dsv": ["weather"], seedrandom: ["numeric"] };

const registryOwners = Object.entries(owners).map(([name, owning]) => ({
  name: `${name}-owner`,
  severity: "error",
  comment: `${name} belongs to ${owning.join(" and ")} alone, so that it stays out of the bundles of the other parts`,
  from: { path: library, pathNot: places(owning) },
  to: { path: registry([name]) },
}));

const publicNames = `${library}/(index|units|[a-z]+/index)\\.ts$`;

/** @type {import("dependency-cruiser").IForbiddenRuleType[]} */
const rules = [
  ...betweenParts,
  ...registryOwners,
  {
    name: "known-parts",
    severity: "error",
    comment: "a new folder of the library needs its row in the table above",
    from: { path: library, pathNot: [places(parts), `${library}/index\\.ts$`] },
    to: {},
  },
  {
    name: "pure-library",
    severity: "error",
    comment: "the library knows nothing of node, the browser or any package but its own three",
    from: { path: library },
    to: { pathNot: [library, registry(Object.keys(owners))] },
  },
  {
    name: "simulate-without-zod",
    severity: "error",
    comment: "simulate takes parsed scenarios, so that zod stays out of its bundle",
    from: { path: `${library}/scenario/(run|simulation)\\.ts$` },
    to: { path: registry(["zod"]), reachable: true },
  },
  {
    name: "public-names",
    severity: "error",
    comment: "the command line and the playground use what the library publishes",
    from: { path: ["^packages/cli/", "^playground/"] },
    to: { path: "^packages/rootledger/", pathNot: publicNames },
  },
  {
    name: "by-package-name",
    severity: "error",
    comment: "the library is imported by its name, not by a path into its folder",
    from: { path: ["^packages/cli/", "^playground/"] },
    to: { path: "^packages/rootledger/", dependencyTypes: ["local"] },
  },
  {
    name: "cli-apart",
    severity: "error",
    comment: "the command line belongs to nobody else",
    from: { path: "^(packages/rootledger|playground)/" },
    to: { path: "^packages/cli/" },
  },
  {
    name: "playground-apart",
    severity: "error",
    comment: "the playground belongs to nobody else",
    from: { path: "^packages/" },
    to: { path: "^playground/" },
  },
  {
    name: "worker-without-screen",
    severity: "error",
    comment: "the worker computes; it neither draws nor renders",
    from: { path: `${playground}/worker/` },
    to: {
      path: [
        registry(["lit", "lit-html", "lit-element", "d3", "d3-[a-z]+"]),
        `${playground}/(charts|fields|pages|shell|main)`,
      ],
    },
  },
  {
    name: "drawing-without-state",
    severity: "error",
    comment: "fields and charts get properties and send events: no store, no address, no worker",
    from: { path: `${playground}/(fields|charts)/` },
    to: { path: [`${playground}/(worker|pages)/`, `${playground}/state/(store|link|codec)\\.ts$`] },
  },
  {
    name: "drawing-without-model",
    severity: "error",
    comment: "fields and charts know the library's types only",
    from: { path: `${playground}/(fields|charts)/` },
    to: { path: "^packages/rootledger/", dependencyTypesNot: ["type-only"] },
  },
  {
    name: "tests-apart",
    severity: "error",
    comment: "tests are never imported",
    from: { path: "^(packages|playground)/" },
    to: { path: "^tests/" },
  },
  {
    name: "no-circles",
    severity: "error",
    comment: "two files that need each other at run time are one file, or three",
    from: {},
    to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
  },
  {
    name: "resolvable",
    severity: "error",
    comment: "an import that leads nowhere escapes every other rule",
    from: {},
    to: { couldNotResolve: true, pathNot: "\\?(raw|url|worker|inline)$" },
  },
];

/** @type {import("dependency-cruiser").IConfiguration} */
export default {
  forbidden: rules,
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)dist/" },
    tsPreCompilationDeps: true,
    combinedDependencies: true,
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["rootledger-source", "import", "module", "default", "types"],
      extensions: [".ts", ".js", ".mjs", ".json", ".css", ".csv"],
    },
  },
};
