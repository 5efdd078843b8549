import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { dataText, demoJson, oneDayComparison } from "../support/demo-files.js";

const folder = mkdtempSync(join(tmpdir(), "machine-faults-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const inFolder = (name: string): string => join(folder, name);
const built = fileURLToPath(new URL("../../packages/cli/dist/main.js", import.meta.url));

const short = oneDayComparison();
writeFileSync(inFolder("weather.csv"), dataText("demo/weather.csv"));
writeFileSync(inFolder("comparison.json"), JSON.stringify(short));

const hookOf = (name: string, script: string): string => {
  const path = inFolder(`${name}.mjs`);
  writeFileSync(path, script);
  return path;
};

/** Node tells of every real worker thread that is made; the one with this number is ended once it has answered so often. */
const killer = (name: string, dies: string): string =>
  hookOf(
    name,
    `let made = 0;
process.on("worker", (worker) => {
  const number = ++made;
  let answers = 0;
  const look = () => { if (${dies}) void worker.terminate(); };
  worker.on("message", () => { answers++; look(); });
  worker.on("online", look);
});`,
  );

/** The disk refuses as a full one does what is written into files of this name. */
const fullFor = (ending: string): string =>
  hookOf(
    `full${ending}`,
    `import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
const { open } = fs.promises;
fs.promises.open = async (path, ...more) => {
  const file = await open(path, ...more);
  if (String(path).endsWith(${JSON.stringify(`${ending}.part`)}))
    file.write = async () => { throw Object.assign(new Error("no space"), { code: "ENOSPC" }); };
  return file;
};
syncBuiltinESMExports();`,
  );

function expectSameFiles(one: string, other: string): void {
  expect(readdirSync(inFolder(one))).toEqual(readdirSync(inFolder(other)));
  for (const name of readdirSync(inFolder(other)))
    expect(readFileSync(inFolder(`${one}/${name}`)).equals(readFileSync(inFolder(`${other}/${name}`)))).toBe(true);
}

const shardInto = (name: string): string[] => ["--shard", "1/1", "--out", inFolder(name)];
beforeAll(() => {
  expect(run(undefined, ...shardInto("whole")).status).toBe(0);
});

function run(hook: string | undefined, ...more: string[]) {
  const hooked = hook === undefined ? [] : ["--import", hook];
  const asked = ["ensemble", inFolder("comparison.json"), "--seed", "killed", "--members", "30", "--workers", "2"];
  const { status, stdout, stderr } = spawnSync(process.execPath, [...hooked, built, ...asked, ...more], {
    encoding: "utf8",
  });
  return { status, stdout, stderr };
}

describe("a real worker thread that is ended", () => {
  const midway = killer("midway", "number === 1 && answers === 2");

  test("in the middle of an ensemble is named, and the answer is the same", () => {
    const undisturbed = run(undefined, "--json");
    expect(undisturbed.stderr).not.toMatch(/worker/);
    const killed = run(midway, "--json");
    expect(killed.stderr).toMatch(/a worker thread ended: it stopped; what it left undone goes to others\n/);
    expect(killed.stdout === undisturbed.stdout && killed.status === 0).toBe(true);
  });

  test("in the middle of a shard leaves the shard its bytes", () => {
    expect(run(midway, ...shardInto("killed"))).toMatchObject({
      status: 0,
      stderr: expect.stringMatching(/a worker thread ended/),
    });
    expectSameFiles("killed", "whole");
  });

  test("in the middle of a search for advice is named, and the advice is the same", () => {
    writeFileSync(
      inFolder("scenario.json"),
      JSON.stringify({ ...demoJson("scenario"), season: short.season, start: short.start }),
    );
    const search = (...hooked: string[]) => {
      const asked = ["advise", inFolder("scenario.json"), "--members", "1", "--days", "1", "--workers", "2", "--json"];
      return spawnSync(process.execPath, [...hooked, built, ...asked], { encoding: "utf8" });
    };
    // Advice takes listeners off its workers from batch to batch, so what is sent is counted: batch, members, and members after an answer.
    const sent = hookOf(
      "sent",
      `let made = 0;
process.on("worker", (worker) => {
  if (++made > 1) return;
  const { postMessage } = worker;
  let posts = 0;
  worker.postMessage = (message) => {
    postMessage.call(worker, message);
    if (++posts === 3) void worker.terminate();
  };
});`,
    );
    const undisturbed = search();
    const killed = search("--import", sent);
    expect({ status: undisturbed.status, said: /worker/.test(undisturbed.stderr) }).toEqual({ status: 0, said: false });
    expect(killed.stderr).toMatch(/a worker thread ended: it stopped/);
    expect(killed.stdout === undisturbed.stdout && killed.status === 0).toBe(true);
  });

  test("again and again before any has answered stops the command, and says why", () => {
    const { status, stdout, stderr } = run(killer("always", "answers === 0"), "--json");
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toMatch(/4 workers ended before any had answered: it stopped/);
  });
});

test.each([".csv", ".parquet", ".tally.json", "members-20-to-29.json"])(
  "a disk that is full when %s is written is named, leaves no half file, and the shard goes on to the same bytes",
  (ending) => {
    const name = `full${ending}`;
    const { status, stdout, stderr } = run(fullFor(ending), ...shardInto(name));
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
    expect(stderr).toMatch(`${ending}: received a full disk; must be a place that can be written\n`);
    const left = readdirSync(inFolder(name), { recursive: true }) as string[];
    expect(left.filter((file) => file.endsWith(".part") || file.endsWith("of-1.json"))).toEqual([]);
    expect(run(undefined, ...shardInto(name)).status).toBe(0);
    expectSameFiles(name, "whole");
  },
);
