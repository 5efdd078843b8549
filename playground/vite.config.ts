import { defineConfig } from "vite";

export default defineConfig({
  base: "./",
  resolve: { conditions: ["rootledger-source", "module", "browser", "development|production"] },
  worker: { format: "es" },
  build: { target: "es2022", outDir: "dist", sourcemap: false },
});
