import { fileURLToPath } from "node:url";
import { build } from "vite";

/** A file of this folder with all it imports, as a script that sets one global name. */
export async function bundled(file: string, name: string): Promise<string> {
  const entry = fileURLToPath(new URL(file, import.meta.url));
  const out = await build({
    configFile: false,
    logLevel: "error",
    build: { write: false, minify: false, lib: { entry, name, formats: ["iife"] } },
  });
  const chunk = [out].flat().flatMap((part) => ("output" in part ? part.output : []))[0];
  if (chunk?.type !== "chunk") throw new Error(`${file} gave no script`);
  return `${chunk.code};globalThis.${name} = ${name};`;
}
