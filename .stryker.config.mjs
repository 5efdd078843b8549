// Mutation testing of the ground, the trees and the ledger: `npm run mutate`, `MUTATE=ground npm run mutate` for one of them, or
// `npm run mutate -- --mutate FILE[,FILE]`. Incremental: what has been judged is kept in out/mutation and only what changed is run again.
// Texts are not mutated, most of them are sources and messages; nor is what runs once when a file is loaded, such as tables,
// since every test would have to run for it.
const parts = {
  ground: "packages/rootledger/src/ground/*.ts",
  tree: "packages/rootledger/src/tree/*.ts",
  ledger: "packages/rootledger/src/scenario/hour-ledger.ts",
};
const { MUTATE } = process.env;

export default {
  testRunner: "vitest",
  vitest: { configFile: "tests/mutate.config.ts", related: false },
  plugins: ["@stryker-mutator/vitest-runner"],
  mutate: [...(MUTATE === undefined ? Object.values(parts) : [parts[MUTATE]]), "!packages/rootledger/src/*/index.ts"],
  mutator: { excludedMutations: ["StringLiteral"] },
  ignorePatterns: [
    "out",
    "playground",
    "packages/*/dist",
    "data/weather",
    "data/messy",
    "data/soil-moisture",
    "data/station",
  ],
  coverageAnalysis: "perTest",
  ignoreStatic: true,
  incremental: true,
  incrementalFile: `out/mutation/incremental-${MUTATE ?? "all"}.json`,
  reporters: ["clear-text", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: "out/mutation/report.json" },
  concurrency: 1,
  timeoutMS: 6_000,
  dryRunTimeoutMinutes: 30,
  tempDirName: "out/mutation-sandbox",
  cleanTempDir: "always",
};
