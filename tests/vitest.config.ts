import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL(".", import.meta.url));

export default defineConfig({
  root,
  resolve: { conditions: ["rootledger-source"] },
  ssr: { resolve: { conditions: ["rootledger-source"] } },
  test: {
    include: ["**/*.test.ts"],
    exclude: ["**/node_modules/**"],
    testTimeout: 120_000,
    hookTimeout: 180_000,
    maxWorkers: 2,
    server: { deps: { inline: ["rootledger", "@rootledger/cli"] } },
  },
});
