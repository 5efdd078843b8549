import { gzipSync } from "node:zlib";
import { build, type Plugin, type Rollup } from "vite";
import { expect, test } from "vitest";

/** Own budgets, no source: a page that only simulates must not wait for its code. */
const simulateKb = 25;

test("simulate alone carries no zod and stays small", async () => {
  const { code, modules } = await bundle('export { simulate } from "rootledger";');
  const kb = gzipSync(code).length / 1000;
  console.log(`simulate alone: ${kb.toFixed(1)} kB gzip of at most ${simulateKb}, ${modules.length} modules`);
  expect(modules.filter((id) => /node_modules/.test(id))).toEqual([]);
  expect(modules.length).toBeGreaterThanOrEqual(40);
  expect(code).toContain("residualFraction");
  expect(kb).toBeLessThanOrEqual(simulateKb);
});

test("the same look at parseScenario does see zod", async () => {
  const { modules } = await bundle('export { parseScenario } from "rootledger/scenario";');
  expect(modules.some((id) => /node_modules\/.*\/zod\//.test(id))).toBe(true);
});

/** What a page would load for these exports: tree-shaken, minified, in one piece. */
async function bundle(source: string): Promise<{ code: string; modules: readonly string[] }> {
  const entry: Plugin = {
    name: "entry",
    resolveId: (id) => (id === "entry" ? `${import.meta.dirname}/entry.js` : undefined),
    load: (id) => (id.endsWith("/package/entry.js") ? source : undefined),
  };
  const built = (await build({
    configFile: false,
    logLevel: "silent",
    resolve: { conditions: ["rootledger-source", "import", "module", "default"] },
    plugins: [entry],
    build: {
      write: false,
      target: "es2022",
      minify: true,
      modulePreload: false,
      rollupOptions: { input: "entry", preserveEntrySignatures: "strict" },
    },
  })) as Rollup.RollupOutput;
  const chunks = built.output.filter((part) => part.type === "chunk");
  return {
    code: chunks.map((chunk) => chunk.code).join("\n"),
    modules: chunks.flatMap((chunk) =>
      Object.entries(chunk.modules)
        .filter(([, { renderedLength }]) => renderedLength > 0)
        .map(([id]) => id),
    ),
  };
}
