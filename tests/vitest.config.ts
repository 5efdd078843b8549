import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL(".", import.meta.url));
const conditions = ["rootledger-source"];

// Two projects: `node` runs the library and the command line from source; `browser` drives Chromium against the built playground.
export default defineConfig({
  root,
  test: {
    maxWorkers: 2,
    projects: [
      {
        resolve: { conditions },
        ssr: { resolve: { conditions } },
        test: {
          name: "node",
          setupFiles: ["support/seeded-chance.ts"],
          include: ["{unit,laws,published,accuracy,validate,cli,package,imports,bench}/**/*.test.ts"],
          testTimeout: 120_000,
          hookTimeout: 180_000,
        },
      },
      {
        test: {
          name: "browser",
          include: ["browser/**/*.test.ts"],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
          // What a page shows comes when its workers are done; a test asks until it is there.
          expect: { poll: { timeout: 20_000, interval: 50 } },
        },
      },
    ],
  },
});
