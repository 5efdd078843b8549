// npm run validate [-- --json] [-- --stored | --store]: soil moisture of measured stations on unseen 30-day blocks, against two
// baselines. Fits anew unless --stored; --store keeps the parameters. Pictures go to out/validate.
import { fileURLToPath } from "node:url";
import { createServer } from "vite";

const flags = process.argv.slice(2);
const soils = flags.includes("--stored") ? "stored" : flags.includes("--store") ? "fit-and-store" : "fit";
const plots = fileURLToPath(new URL("../../out/validate", import.meta.url));
const root = fileURLToPath(new URL("..", import.meta.url));
const conditions = ["rootledger-source"];
const started = performance.now();
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
  const { validateStations } = await server.ssrLoadModule("/validate/run.ts");
  const stations = validateStations({ soils, plots, progress: (name) => process.stderr.write(`${name}\n`) });
  if (flags.includes("--json")) process.stdout.write(`${JSON.stringify({ stations })}\n`);
  else for (const station of stations) process.stdout.write(tableOf(station));
  process.stderr.write(`${((performance.now() - started) / 1000).toFixed(0)} s; pictures in out/validate\n`);
} finally {
  await server.close();
}

function tableOf(station) {
  const cells = (values, mean) => [...values, mean].map((v) => v.toFixed(3).padStart(8)).join("");
  const row = (label, { rmse, mean0to50Cm }) => `  ${label.padEnd(24)}${cells(rmse, mean0to50Cm.rmse)}\n`;
  const heads = [...station.depthsCm.map((d) => `${d} cm`), "0-50"].map((h) => h.padStart(8)).join("");
  return [
    `${station.name}, ${station.unseenDays} unseen days\n  ${"".padEnd(24)}${heads}\n`,
    row("RMSE, m3/m3", station),
    `  ${"bias".padEnd(24)}${cells(station.bias, station.mean0to50Cm.bias)}\n`,
    `  ${"Nash-Sutcliffe".padEnd(24)}${cells(station.nse, station.mean0to50Cm.nse)}\n`,
    row("harmonic, RMSE", station.baselines.harmonic),
    row("one bucket, RMSE", station.baselines.bucket),
    row("last reading held, RMSE", station.persistence),
    row("whole year free, RMSE", station.freeRun),
    row("seen days, RMSE", station.seen),
    ...station.notes.map((note) => `  - ${note}\n`),
  ].join("");
}
