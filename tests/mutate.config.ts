import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));
const library = `${root}packages/rootledger/src`;

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
    include: [
      "unit/{ground,tree}/**/*.test.ts",
      "unit/scenario/{limit-periods,root-lanes,young-roots}.test.ts",
      "laws/ground/{curves,infiltration}.test.ts",
      "laws/water/season.test.ts",
      "published/{available,evaporable,fao56,infiltration,need,published,root,soil,salt-steady,salty,two,wetting}*.test.ts",
    ],
    // Fits all classes anew for 20 s and judges no single line.
    exclude: ["unit/ground/default-set.test.ts"],
    testTimeout: 120_000,
  },
});
