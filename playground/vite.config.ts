import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";

/** Nothing may be loaded from, or sent to, any other origin. Development injects styles, so the built page alone carries it. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' blob:",
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

/** Keeps every file of the page on the device, so that it opens without a network; a new build replaces the old one at the next visit. */
const serviceWorker: Plugin = {
  name: "service-worker",
  enforce: "post",
  generateBundle: {
    order: "post",
    handler(_, bundle) {
      const files = ["./", ...Object.keys(bundle).filter((name) => name !== "index.html"), "icon.svg"];
      const hash = createHash("sha256").update(files.join(" "));
      for (const part of Object.values(bundle)) hash.update(part.type === "asset" ? part.source : part.code);
      const source = `const kept = "rootledger-${hash.digest("hex").slice(0, 12)}";
const files = ${JSON.stringify(files)};
addEventListener("install", (event) => event.waitUntil(caches.open(kept).then((cache) => cache.addAll(files))));
addEventListener("activate", (event) => event.waitUntil(caches.keys()
  .then((names) => Promise.all(names.filter((name) => name.startsWith("rootledger-") && name !== kept).map((name) => caches.delete(name))))
  .then(() => clients.claim())));
addEventListener("fetch", (event) => {
  if (event.request.method !== "GET" || new URL(event.request.url).origin !== location.origin) return;
  event.respondWith(caches.match(event.request, { ignoreSearch: true, ignoreVary: true }).then((hit) => hit ?? fetch(event.request)));
});
`;
      this.emitFile({ type: "asset", fileName: "sw.js", source });
    },
  },
};

const conditions = ["rootledger-source", "module", "browser", "development|production"];

export default defineConfig({
  base: "./",
  resolve: { conditions },
  plugins: [contentPolicy, truthFile, serviceWorker],
  worker: { format: "es" },
  build: {
    target: "es2022",
    outDir: "dist",
    sourcemap: false,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
