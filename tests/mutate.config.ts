import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

const root = fileURLToPath(new URL("..", import.meta.url));
const library = `${root}packages/rootledger/src`;

/** Tests that hold each part, without those that would take minutes and judge no single line. */
const tests: Readonly<Record<string, readonly string[]>> = {
  ground: [
    "unit/ground/{by-hand,curve-parameters,material,measured-curve,profile,structure,tabulated,water-translator}.test.ts",
    "laws/ground/{curves,infiltration}.test.ts",
    "published/{available,evaporable,infiltration,published,soil}*.test.ts",
  ],
  tree: ["unit/tree/*.test.ts", "published/{available,need,published}*.test.ts"],
  ledger: ["unit/scenario/hour-ledger.test.ts"],
};

/** The first test that fails ends the run of a mutant, so the published checks, which load the command line, come last. */
class CheapFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const late = ({ moduleId }: TestSpecification): number => Number(moduleId.includes("/published/"));
    return [...files].sort((a, b) => late(a) - late(b));
  }
}

// The tests that hold ground, trees and the ledger, for mutation testing. A sandbox shares the packages folder of the working tree by
// its links, so that the library is named by path here or its mutants would never be seen.
export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  resolve: {
    alias: [
      { find: /^rootledger$/, replacement: `${library}/index.ts` },
      { find: "rootledger/units", replacement: `${library}/units.ts` },
      { find: /^rootledger\/([a-z]+)$/, replacement: `${library}/$1/index.ts` },
      { find: "@rootledger/cli", replacement: `${root}packages/cli/src/index.ts` },
    ],
  },
  test: {
    setupFiles: ["support/seeded-chance.ts"],
    sequence: { sequencer: CheapFirst },
    include: [...(tests[process.env.MUTATE ?? ""] ?? Object.values(tests).flat())],
    testTimeout: 120_000,
  },
});
