import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";

/** Nothing may be loaded from, or sent to, any other origin. Development injects styles, so the built page alone carries it. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self'",
  "worker-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const contentPolicy: Plugin = {
  name: "content-policy",
  apply: "build",
  transformIndexHtml: () => [
    { tag: "meta", attrs: { "http-equiv": "Content-Security-Policy", content: policy }, injectTo: "head-prepend" },
  ],
};

const cli = fileURLToPath(new URL("../packages/cli/dist/main.js", import.meta.url));

/** The published checks as the command line runs them, for the page that shows them. */
const truthFile: Plugin = {
  name: "truth-file",
  generateBundle() {
    const text = execFileSync(process.execPath, [cli, "truth", "--json"], { encoding: "utf8", maxBuffer: 2 ** 26 });
    const short = (_: string, value: unknown) => (typeof value === "number" ? Number(value.toPrecision(7)) : value);
    this.emitFile({ type: "asset", fileName: "truth.json", source: JSON.stringify(JSON.parse(text), short) });
  },
};

const conditions = ["rootledger-source", "module", "browser", "development|production"];

export default defineConfig({
  base: "./",
  resolve: { conditions },
  plugins: [contentPolicy, truthFile],
  worker: { format: "es" },
  build: {
    target: "es2022",
    outDir: "dist",
    sourcemap: false,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
