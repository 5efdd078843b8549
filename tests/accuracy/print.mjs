// npm run accuracy [-- --json] [-- --quick]: every accuracy case beside its reference and bound. Exit 1 when one misses.
import { fileURLToPath } from "node:url";
import { createServer } from "vite";

const json = process.argv.includes("--json");
const subset = process.argv.includes("--quick") ? "quick" : "all";
const root = fileURLToPath(new URL("..", import.meta.url));
const conditions = ["rootledger-source"];
const server = await createServer({
  root,
  configFile: false,
  logLevel: "error",
  appType: "custom",
  server: { middlewareMode: true, hmr: false, ws: false, watch: null },
  optimizeDeps: { noDiscovery: true },
  resolve: { conditions },
  ssr: { resolve: { conditions }, noExternal: ["rootledger"] },
});
try {
  const { accuracyCases } = await server.ssrLoadModule("/accuracy/run.ts");
  const progress = (name) => process.stderr.write(`${name}\n`);
  const cases = accuracyCases({ subset, progress });
  if (json) {
    process.stdout.write(`${JSON.stringify({ cases })}\n`);
  } else {
    const digits = (value) => (value === 0 ? "0" : Number(value).toPrecision(4));
    for (const c of cases) {
      process.stdout.write(
        `${c.pass ? "ok  " : "MISS"} ${c.name}: ours ${digits(c.ours)}, reference ${digits(c.reference)} ${c.unit}, bound ${digits(c.bound)}\n`,
      );
    }
  }
  const missed = cases.filter((c) => !c.pass).length;
  process.stderr.write(`${cases.length} checks, ${missed} missed\n`);
  process.exitCode = missed > 0 ? 1 : 0;
} finally {
  await server.close();
}
