// Shards under a real scheduler: starts munged, slurmctld and slurmd of Debian's packages on this machine, runs 8 shards with
// the array script of the package, merges them and holds the answer and the table to those of a run at once, byte by byte; then kills one
// task on the way and requeues it. `npm run slurm`: as root, on a machine whose Slurm nobody else uses; installs the packages if they are
// absent. Ends with exit code 0 if all is equal.
import { execFileSync, spawn } from "node:child_process";
import {
  chmodSync,
  chownSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { cpus, hostname, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));
const work = mkdtempSync(join(tmpdir(), "slurm-"));
const shards = 8;
const members = 200;
const seed = "slurm";
const conf = join(work, "slurm.conf");
const env = { ...process.env, SLURM_CONF: conf, ROOTLEDGER: `${process.execPath} ${root}packages/cli/dist/main.js` };
const started = [];
const say = (text) => console.log(`${((performance.now() - began) / 1000).toFixed(1)} s  ${text}`);
const began = performance.now();
const run = (command, ...args) => execFileSync(command, args, { encoding: "utf8", env, cwd: work });
const sleep = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

try {
  install();
  startSlurm();
  await until("the node is idle", () => run("sinfo", "--noheader", "--format=%T").trim() === "idle");
  const file = scenario();
  say(`run at once, ${members} members`);
  const single = cli("ensemble", file, "--members", String(members), "--seed", seed, "--json");
  cli("ensemble", file, "--members", String(members), "--seed", seed, "--out", join(work, "whole"));
  const script = join(root, "packages/cli/slurm/ensemble.sbatch");
  const job = run(
    "sbatch",
    "--parsable",
    `--array=1-${shards}`,
    script,
    file,
    String(members),
    seed,
    join(work, "shards"),
  ).trim();
  say(`array job ${job} of ${shards} shards`);
  await until("a shard has a chunk", () => run("find", work, "-path", "*unfinished/*.json").trim() !== "");
  const running = run("squeue", "--noheader", "--array", "--states=RUNNING", "--format=%F_%K").trim().split("\n");
  run("scontrol", "requeue", running[0]);
  say(`killed and requeued task ${running[0]}`);
  await until("the queue is empty", () => run("squeue", "--noheader").trim() === "");
  const merged = cli("merge", join(work, "shards"), "--out", join(work, "merged"), "--json");
  const equal = [
    ["answer", merged === single],
    ["CSV", same("merged/members.csv", "whole/shard-1-of-1.csv")],
    ["Parquet", same("merged/members.parquet", "whole/shard-1-of-1.parquet")],
  ];
  for (const [what, is] of equal)
    say(`${what} of ${shards} shards under Slurm and of the run at once: ${is ? "the same bytes" : "DIFFER"}`);
  process.exitCode = equal.every(([, is]) => is) ? 0 : 1;
} catch (error) {
  console.error(error);
  for (const name of ["slurmctld.log", "slurmd.log", "munged.log"]) {
    if (existsSync(join(work, name))) console.error(name, readFileSync(join(work, name), "utf8").slice(-2000));
  }
  process.exitCode = 1;
} finally {
  for (const child of started.reverse()) child.kill("SIGTERM");
  await sleep(1000);
  for (const child of started) child.kill("SIGKILL");
  rmSync(work, { recursive: true, force: true });
}

function cli(...argv) {
  return execFileSync(process.execPath, [join(root, "packages/cli/dist/main.js"), ...argv], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "ignore"],
  });
}

function same(one, other) {
  return readFileSync(join(work, one)).equals(readFileSync(join(work, other)));
}

function install() {
  const there =
    ["munged", "slurmctld", "slurmd"].every((name) => existsSync(`/usr/sbin/${name}`)) && existsSync("/usr/bin/sbatch");
  if (there) return;
  say("installing munge, slurmctld, slurmd and slurm-client");
  execFileSync(
    "apt-get",
    ["install", "-y", "-qq", "--no-install-recommends", "munge", "slurmctld", "slurmd", "slurm-client"],
    {
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    },
  );
}

/** munged keeps its own user, key and socket in the test's folder; the scheduler runs as root with all its files there. */
function startSlurm() {
  const id = (flag) => Number(execFileSync("id", [flag, "munge"], { encoding: "utf8" }));
  const munge = join(work, "munge");
  mkdirSync(munge);
  writeFileSync(join(munge, "key"), Buffer.from(Array.from({ length: 1024 }, (_, i) => (i * 37 + 11) % 256)));
  for (const path of [munge, join(munge, "key")]) chownSync(path, id("-u"), id("-g"));
  chmodSync(work, 0o755);
  chmodSync(munge, 0o755);
  chmodSync(join(munge, "key"), 0o400);
  const socket = join(munge, "socket");
  const files = ["key", "pid", "log", "seed"].map((name) => `--${name}-file=${join(munge, name)}`);
  start("runuser", "-u", "munge", "--", "/usr/sbin/munged", "--foreground", `--socket=${socket}`, ...files);
  for (const folder of ["state", "spool"]) mkdirSync(join(work, folder));
  const name = hostname().split(".")[0];
  const lines = [
    ...["ClusterName=shards", `SlurmctldHost=${name}(127.0.0.1)`, "SlurmUser=root", "SlurmdUser=root"],
    ...["AuthType=auth/munge", `AuthInfo=socket=${socket}`, "CryptoType=crypto/munge", "MpiDefault=none"],
    ...["ProctrackType=proctrack/linuxproc", "TaskPlugin=task/none", "SwitchType=switch/none"],
    ...["SelectType=select/cons_tres", "SelectTypeParameters=CR_Core", "ReturnToService=2", "JobRequeue=1"],
    ...[
      "SlurmctldPort=16817",
      "SlurmdPort=16818",
      "SchedulerParameters=sched_interval=1,sched_min_interval=10000,batch_sched_delay=0,bf_interval=1,defer",
    ],
    ...[`StateSaveLocation=${join(work, "state")}`, `SlurmdSpoolDir=${join(work, "spool")}`],
    ...[`SlurmctldPidFile=${join(work, "slurmctld.pid")}`, `SlurmdPidFile=${join(work, "slurmd.pid")}`],
    ...[`SlurmctldLogFile=${join(work, "slurmctld.log")}`, `SlurmdLogFile=${join(work, "slurmd.log")}`],
    `NodeName=${name} NodeAddr=127.0.0.1 CPUs=${cpus().length} RealMemory=1000 State=UNKNOWN`,
    `PartitionName=all Nodes=${name} Default=YES MaxTime=INFINITE State=UP`,
  ];
  writeFileSync(conf, `${lines.join("\n")}\n`);
  execFileSync("bash", ["-c", `for i in $(seq 100); do [ -S ${socket} ] && exit 0; sleep 0.1; done; exit 1`]);
  start("/usr/sbin/slurmctld", "-D", "-f", conf);
  start("/usr/sbin/slurmd", "-D", "-f", conf);
}

function start(command, ...args) {
  started.push(spawn(command, args, { env, stdio: "ignore" }));
}

async function until(what, holds) {
  for (let tries = 0; tries < 600; tries++) {
    let is = false;
    try {
      is = holds();
    } catch {
      is = false;
    }
    if (is) {
      say(what);
      return;
    }
    await sleep(500);
  }
  throw new Error(`waited in vain until ${what}`);
}

/** One day of two programmes of the demo on sand. */
function scenario() {
  const demo = new URL("../../data/demo/", import.meta.url);
  const file = JSON.parse(readFileSync(new URL("comparison.json", demo), "utf8"));
  const short = {
    ...file,
    season: { startDate: "2025-12-01", days: 3 },
    soils: file.soils.filter(({ name }) => name === "sand"),
    programmes: file.programmes.slice(1, 3),
    start: { kind: "same-state", tensionKPa: 10 },
  };
  copyFileSync(new URL("weather.csv", demo), join(work, "weather.csv"));
  writeFileSync(join(work, "comparison.json"), JSON.stringify(short));
  return join(work, "comparison.json");
}
