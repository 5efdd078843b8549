import { spawn } from "node:child_process";

/**
 * Runs one command as a named step: its output passes through, a line says so when it has been silent for two seconds,
 * and its seconds are printed at the end. `show` hands it the terminal itself. Resolves to whether it succeeded and what
 * it printed.
 */
export function runStep(name, command, args, { cwd, env = {}, show = false }) {
  const began = Date.now();
  const seconds = () => ((Date.now() - began) / 1000).toFixed(1);
  console.log(`\n> ${name} ...`);
  const colour = process.stdout.isTTY && !process.env.NO_COLOR ? { FORCE_COLOR: "1" } : {};
  return new Promise((resolve) => {
    const output = [];
    let quietMs = 2000;
    const stdio = ["ignore", show ? "inherit" : "pipe", show ? "inherit" : "pipe"];
    const child = spawn(command, args, { cwd, stdio, env: { ...process.env, ...colour, ...env } });
    const sayAlive = () => {
      console.log(`  ${name}: ${seconds()} s so far`);
      quietMs = 5000;
      alive = setTimeout(sayAlive, quietMs);
    };
    let alive = show ? undefined : setTimeout(sayAlive, quietMs);
    const pass = (stream) => (chunk) => {
      output.push(chunk);
      stream.write(chunk);
      clearTimeout(alive);
      alive = setTimeout(sayAlive, quietMs);
    };
    child.stdout?.on("data", pass(process.stdout));
    child.stderr?.on("data", pass(process.stderr));
    let ended = false;
    const end = (ok, how) => {
      if (ended) return;
      ended = true;
      clearTimeout(alive);
      console.log(`> ${name}: ${how} in ${seconds()} s`);
      resolve({ ok, output: Buffer.concat(output).toString("utf8") });
    };
    child.on("error", (error) => end(false, `could not be started (${error.message})`));
    child.on("close", (code, signal) => end(code === 0, code === 0 ? "done" : `failed (${signal ?? code})`));
  });
}
