// Mutation testing of the ground, the trees and the ledger: `npm run mutate`, or `npm run mutate -- --mutate FILE[,FILE]` for some
// files. Incremental: what has been judged is kept in out/mutation and only what changed is run again. Texts are not mutated: most of
// them are sources and messages; nor is what runs once when a file is loaded, such as tables, since every test would have to run for it.
export default {
  testRunner: "vitest",
  vitest: { configFile: "tests/mutate.config.ts", related: false },
  plugins: ["@stryker-mutator/vitest-runner"],
  mutate: [
    "packages/rootledger/src/ground/*.ts",
    "packages/rootledger/src/tree/*.ts",
    "packages/rootledger/src/scenario/hour-ledger.ts",
    "!packages/rootledger/src/*/index.ts",
  ],
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
  incrementalFile: "out/mutation/incremental.json",
  reporters: ["clear-text", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: "out/mutation/report.json" },
  concurrency: 1,
  timeoutMS: 30_000,
  tempDirName: ".stryker-tmp",
  cleanTempDir: "always",
};
