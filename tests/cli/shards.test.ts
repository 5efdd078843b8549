import { execFile, execFileSync, spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { main, nodeDisk } from "@rootledger/cli";
import { parquetMetadata, parquetReadObjects } from "hyparquet";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { dataText, oneDayComparison } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const folder = mkdtempSync(join(tmpdir(), "shards-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const inFolder = (name: string): string => join(folder, name);
const built = fileURLToPath(new URL("../../packages/cli/dist/main.js", import.meta.url));
const bytes = (...names: string[]): Buffer => readFileSync(join(folder, ...names));

const short = oneDayComparison();
writeFileSync(inFolder("weather.csv"), dataText("demo/weather.csv"));
writeFileSync(inFolder("comparison.json"), JSON.stringify(short));
const ensemble = ["ensemble", inFolder("comparison.json"), "--seed", "shards"];

async function answer(...argv: string[]) {
  const { io, written } = memoryIo();
  const code = await main(argv, { ...io, disk: nodeDisk });
  return { code, ...written };
}

/** Runs an ensemble in shards in this thread. */
async function inShards(members: number, shards: number, name: string): Promise<string> {
  for (let shard = 1; shard <= shards; shard++) {
    const asked = ["--members", String(members), "--shard", `${shard}/${shards}`, "--out", inFolder(name)];
    expect((await answer(...ensemble, ...asked)).code).toBe(0);
  }
  return inFolder(name);
}

describe("200 members", () => {
  const asked = [...ensemble, "--members", "200", "--json"];
  let single = "";
  beforeAll(async () => {
    single = (await answer(...asked)).stdout;
  });

  test("give the same answer and the same tables in 1, 2, 4 and 7 shards as at once", async () => {
    const tables: Record<string, Buffer[]> = {};
    for (const shards of [1, 2, 4, 7]) {
      const where = await inShards(200, shards, `d${shards}`);
      const merged = await answer("merge", where, "--out", inFolder(`m${shards}`), "--json");
      expect(merged).toMatchObject({ code: 0, stderr: "" });
      expect(merged.stdout === single).toBe(true);
      tables[shards] = [bytes(`m${shards}`, "members.csv"), bytes(`m${shards}`, "members.parquet")];
    }
    const whole = [bytes("d1", "shard-1-of-1.csv"), bytes("d1", "shard-1-of-1.parquet")];
    for (const merged of Object.values(tables)) {
      for (const [i, table] of merged.entries()) expect(table.equals(whole[i] ?? Buffer.of())).toBe(true);
    }
    const members = whole[0]!.toString("utf8").trimEnd().split("\n").slice(1);
    expect(members.map((line) => Number(line.split(",")[0]))).toEqual(
      Array.from({ length: 200 * 2 * 2 }, (_, i) => Math.floor(i / 4)),
    );
  });

  test("give it with 1, 2 and 4 workers, and a shard its bytes", () => {
    const run = (...argv: string[]) =>
      execFileSync(process.execPath, [built, ...argv], { encoding: "utf8", stdio: "pipe" });
    for (const workers of ["1", "2", "4"]) expect(run(...asked, "--workers", workers) === single).toBe(true);
    run(...ensemble, "--members", "200", "--shard", "7/7", "--out", inFolder("w2"), "--workers", "2");
    for (const name of readdirSync(inFolder("w2"))) expect(bytes("w2", name).equals(bytes("d7", name))).toBe(true);
  }, 240_000);
});

test("the text and the CSV of merged shards are those of the run at once; more shards than members do no harm", async () => {
  const asked = [...ensemble, "--members", "3"];
  const where = await inShards(3, 5, "few");
  expect((await answer("merge", where)).stdout).toBe((await answer(...asked)).stdout);
  expect((await answer("merge", where, "--csv")).stdout).toBe((await answer(...asked, "--csv")).stdout);
});

test("shards of several folders are merged, in any order", async () => {
  const one = [...ensemble, "--members", "4", "--shard"];
  await answer(...one, "2/2", "--out", inFolder("second"));
  await answer(...one, "1/2", "--out", inFolder("first"));
  const merged = await answer("merge", inFolder("second"), inFolder("first"));
  expect(merged.stdout).toBe((await answer(...ensemble, "--members", "4")).stdout);
});

test("a member that failed has its rows with the reason and its draw, in CSV and in Parquet", async () => {
  writeFileSync(inFolder("draws.csv"), "kcb,root-depth\n0.9,50\n1.1,500\n1,60\n");
  const own = ["ensemble", inFolder("comparison.json"), "--draws", inFolder("draws.csv")];
  for (const shard of ["1/2", "2/2"]) {
    expect((await answer(...own, "--shard", shard, "--out", inFolder("own"))).code).toBe(0);
  }
  const merged = await answer("merge", inFolder("own"), "--out", inFolder("own-merged"), "--json");
  expect(merged.stdout).toBe((await answer(...own, "--json")).stdout);
  const table = bytes("own-merged", "members.parquet");
  const file = table.buffer.slice(table.byteOffset, table.byteOffset + table.byteLength) as ArrayBuffer;
  const rows = await parquetReadObjects({ file });
  const [head = "", ...lines] = bytes("own-merged", "members.csv").toString("utf8").trimEnd().split("\n");
  expect(lines).toHaveLength(12);
  expect(rows.map((row) => row.member)).toEqual([0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2]);
  for (const row of rows.slice(4, 8)) {
    expect(row).toMatchObject({
      status: "failed",
      draw_kcb_factor: 1.1,
      "draw_root-depth_cm": 500,
    });
    expect(row.fault).toMatch(/roots|profile|deep/i);
    expect(row.applied_L).toBeNull();
  }
  const columns = head.split(",");
  expect(columns).toEqual(
    parquetMetadata(file)
      .schema.slice(1)
      .map(({ name }) => name),
  );
  for (const [i, line] of lines.entries()) {
    const cells = line.split(",");
    if (cells.length !== columns.length) continue;
    for (const [c, name] of columns.entries()) expect(String(rows[i]?.[name] ?? "")).toBe(cells[c]);
  }
});

test("a shard that is killed goes on from its complete chunks and ends with the same bytes", async () => {
  const argv = (where: string) => [...ensemble, "--members", "120", "--shard", "1/1", "--out", inFolder(where)];
  const child = spawn(process.execPath, [built, ...argv("killed"), "--workers", "2"], { stdio: "ignore" });
  const ended = new Promise((resolve) => child.on("exit", resolve));
  const unfinished = inFolder("killed/shard-1-of-1.unfinished");
  const chunks = (): string[] => {
    try {
      return readdirSync(unfinished).filter((name) => name.endsWith(".json"));
    } catch {
      return [];
    }
  };
  while (chunks().length === 0) await new Promise((resolve) => setTimeout(resolve, 5));
  child.kill("SIGKILL");
  await ended;
  const kept = chunks();
  expect(kept.length).toBeGreaterThan(0);
  expect(readdirSync(inFolder("killed"))).toEqual(["shard-1-of-1.unfinished"]);
  // One of them cut short, as by a machine that lost its power: it is run again.
  const spoiled = join(unfinished, kept[0] ?? "");
  writeFileSync(spoiled, readFileSync(spoiled).subarray(0, 1000));
  expect((await answer(...argv("killed"))).code).toBe(0);
  expect((await answer(...argv("whole"))).code).toBe(0);
  expect(readdirSync(inFolder("killed"))).toEqual(readdirSync(inFolder("whole")));
  for (const name of readdirSync(inFolder("whole"))) {
    expect(bytes("killed", name).equals(bytes("whole", name))).toBe(true);
  }
});

describe("what is wrong is said, with the path, what is there and the rule, exit code 1", () => {
  const spoil = (name: string, spoilt: (where: string) => void): string => {
    const where = mkdtempSync(join(folder, `${name}-`));
    for (const file of readdirSync(inFolder("sound"))) copyFileSync(inFolder(`sound/${file}`), join(where, file));
    spoilt(where);
    return where;
  };
  const cut = (name: string) => (where: string) => {
    const whole = readFileSync(join(where, name));
    writeFileSync(join(where, name), whole.subarray(0, whole.length - 100));
  };
  const touched = (name: string) => (where: string) => {
    const whole = readFileSync(join(where, name));
    whole[whole.length - 50] = 1 + (whole[whole.length - 50] ?? 0);
    writeFileSync(join(where, name), whole);
  };
  beforeAll(async () => {
    await inShards(4, 2, "sound");
    for (const [name, seed, members] of [
      ["other-seed", "other", "4"],
      ["other-size", "shards", "6"],
    ]) {
      const asked = ["--seed", seed!, "--members", members!, "--shard", "2/2", "--out", inFolder(name!)];
      await answer("ensemble", inFolder("comparison.json"), ...asked);
    }
    const changed = { ...short, start: { kind: "same-state", tensionKPa: 11 } };
    writeFileSync(inFolder("changed.json"), JSON.stringify(changed));
    const asked = ["--seed", "shards", "--members", "4", "--shard", "2/2", "--out", inFolder("other-input")];
    await answer("ensemble", inFolder("changed.json"), ...asked);
  });
  const from = (other: string) => (where: string) => {
    for (const file of readdirSync(inFolder(other))) copyFileSync(inFolder(`${other}/${file}`), join(where, file));
  };
  /** A shard as another version of the library would have sealed it. */
  const aged = (name: string) => (where: string) => {
    const [, content = ""] = /"content":(.*)\}\n$/s.exec(readFileSync(join(where, name), "utf8")) ?? [];
    const older = content.replace(/"version":\s*"[^"]+"/, '"version":"0.0.9"');
    const sha256 = createHash("sha256").update(`${older}\n`).digest("hex");
    writeFileSync(join(where, name), `{"sha256":"${sha256}","content":${older}}\n`);
  };
  test.each<[string, (where: string) => void, RegExp]>([
    ["one of another version", aged("shard-2-of-2.json"), /2-of-2\.json version: received 0\.0\.9; must be the same/],
    [
      "all of another version",
      (where) => ["shard-1-of-2.json", "shard-2-of-2.json"].map((name) => aged(name)(where)),
      /1-of-2\.json: received 0\.0\.9; must be this version's own, which is/,
    ],
    ["a CSV cut short", cut("shard-1-of-2.csv"), /shard-1-of-2\.csv: received \d+ of \d+ bytes; must be as long/],
    ["a Parquet file cut short", cut("shard-2-of-2.parquet"), /shard-2-of-2\.parquet: received \d+ of \d+ bytes/],
    [
      "a Parquet file that was changed",
      touched("shard-1-of-2.parquet"),
      /parquet: received [0-9a-f]{64}; must have the SHA/,
    ],
    ["a tally that was changed", touched("shard-1-of-2.tally.json"), /tally\.json: received [0-9a-f]{64}; must have/],
    ["a JSON file cut short", cut("shard-1-of-2.json"), /shard-1-of-2\.json: received a text that is not/],
    ["a JSON file that was changed", touched("shard-1-of-2.json"), /shard-1-of-2\.json: received a text that is not/],
    [
      "no table",
      (where) => rmSync(join(where, "shard-1-of-2.csv")),
      /shard-1-of-2\.csv: received no such file; must be/,
    ],
    [
      "a missing shard",
      (where) => rmSync(join(where, "shard-2-of-2.json")),
      /received 1 of 2; must be all shards; missing: 2/,
    ],
    ["another seed", from("other-seed"), /shard-2-of-2\.json seed: received other; must be the same .* shards\n/],
    ["another size", from("other-size"), /shard-2-of-2\.json members: received 6; must be the same in all .* 4\n/],
    ["another scenario", from("other-input"), /shard-2-of-2\.json input: received [0-9a-f]{64}; must be the same/],
    [
      "nothing",
      (where) => readdirSync(where).map((name) => rmSync(join(where, name))),
      /received no shard-I-of-N\.json/,
    ],
  ])("%s", async (name, spoilt, said) => {
    const where = spoil(name.replaceAll(" ", "-"), spoilt);
    const merged = await answer("merge", where, "--json");
    expect(merged).toMatchObject({ code: 1, stdout: "" });
    expect(merged.stderr).toMatch(said);
  });

  test("a shard twice, a folder that is not there, a folder of another ensemble", async () => {
    expect(
      (
        await answer(
          "merge",
          inFolder("sound"),
          spoil("twin", () => undefined),
        )
      ).stderr,
    ).toMatch(/received shard 1; must be there once; it is in .*sound/);
    expect((await answer("merge", inFolder("absent"))).stderr).toMatch(
      /absent: received no such file; must be a place/,
    );
    const asked = ["--members", "4", "--shard", "2/2", "--out", inFolder("sound")];
    const other = await answer("ensemble", inFolder("changed.json"), "--seed", "shards", ...asked);
    expect(other).toMatchObject({ code: 1, stdout: "" });
    expect(other.stderr).toMatch(/shard-2-of-2\.json: received [0-9a-f]{64}; must be a folder without another/);
  });

  test.each([
    [["--shard", "0/3", "--out", "x"], /--shard must be i\/n, 1 <= i <= n, like 3\/8: got 0\/3/],
    [["--shard", "4/3", "--out", "x"], /got 4\/3/],
    [["--shard", "1/3"], /--shard needs --out/],
    [["--out", "x", "--rank", "screen"], /--rank is not run in shards/],
    [["--out", "x", "--csv"], /--csv is not for a shard/],
  ])("%j", async (argv, said) => {
    const refused = await answer(...ensemble, ...argv);
    expect(refused).toMatchObject({ code: 1, stdout: "" });
    expect(refused.stderr).toMatch(said);
  });

  test("a place that cannot be written and a disk that is full leave no half file behind", async () => {
    writeFileSync(inFolder("a-file"), "");
    const barred = await answer(...ensemble, "--members", "2", "--out", inFolder("a-file/below"));
    expect(barred).toMatchObject({ code: 1, stdout: "" });
    expect(barred.stderr).toMatch(/received (not a folder|.*); must be a place that can be written/);
    // The kernel's own refusal: no file may grow beyond 4 kB.
    const script = `ulimit -f 4; exec "$0" "$@"`;
    const argv = [process.execPath, built, ...ensemble, "--members", "40", "--out", inFolder("full"), "--workers", "1"];
    const run = promisify(execFile)("bash", ["-c", script, ...argv]);
    const { code, stderr } = await run.then(
      () => ({ code: 0, stderr: "" }),
      (error: { code: number; stderr: string }) => error,
    );
    expect(code).toBe(1);
    expect(stderr).toMatch(/full.*: received a file grown beyond what is allowed; must be a place that can be written/);
    const left = readdirSync(inFolder("full"), { recursive: true }) as string[];
    expect(left.filter((name) => name.endsWith(".part"))).toEqual([]);
    expect((await answer(...ensemble, "--members", "40", "--out", inFolder("full"))).code).toBe(0);
  });
});
