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

const conditions = ["rootledger-source", "module", "browser", "development|production"];

export default defineConfig({
  base: "./",
  resolve: { conditions },
  plugins: [contentPolicy],
  worker: { format: "es" },
  build: {
    target: "es2022",
    outDir: "dist",
    sourcemap: false,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
