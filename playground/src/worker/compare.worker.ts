import { parseComparison } from "rootledger/scenario";
import weatherText from "../../../data/demo/weather.csv?raw";
import { groundFacts } from "./ground-facts.js";
import type {
  Answer,
  CheckRequest,
  CompareRequest,
  DrawsRequest,
  HelperRequest,
  RankRequest,
  SweepRequest,
  WorkerMessage,
} from "./protocol.js";
import { type SlicedOptions, type Slices, slicedCompare } from "./sliced-compare.js";
import { recall, remember, type SoilMemory } from "./soil-memory.js";

const files: Readonly<Record<string, string>> = { "weather.csv": weatherText };
/** A season that takes less than this needs no preview. */
const previewFromMs = 300;
const progressEveryMs = 100;

let newest = 0;
let seasonTookMs = 0;
let memory: SoilMemory | undefined;
const door = new MessageChannel();

self.onmessage = ({
  data,
}: MessageEvent<CompareRequest | CheckRequest | SweepRequest | DrawsRequest | RankRequest | HelperRequest>) => {
  newest = data.id;
  if (data.kind === "compare") void answer(data);
  else if (data.kind === "check") void check(data);
  else if (data.kind === "sweep") void sweep(data);
  else if (data.kind === "draws" || data.kind === "rank") void draw(data);
  else help(data);
};

/** Made when the first plan comes; requests keep their order, since all wait for the same code. */
let helper: Promise<(request: HelperRequest) => void> | undefined;

function help(request: HelperRequest): void {
  helper ??= import("./draws-run.js").then(({ memberHelper }) => memberHelper(post));
  void helper.then((receive) => receive(request));
}

async function draw(request: DrawsRequest | RankRequest): Promise<void> {
  const { id, file } = request;
  try {
    const parsed = parseComparison(file, { ...files, ...request.files });
    if (!parsed.ok) {
      post({ id, kind: "faults", faults: parsed.faults });
      return;
    }
    const { drawUnknowns, rankUnknownsOf } = await import("./draws-run.js");
    const setting = {
      openHelper: () => new Worker(self.location.href, { type: "module" }),
      outdated: () => id !== newest,
      now: () => performance.now(),
      progress: progressTo(id),
      give: post,
    };
    if (request.kind === "draws") await drawUnknowns(request, parsed.comparison, setting);
    else await rankUnknownsOf(request, parsed.comparison, setting);
  } catch (error) {
    post({ id, kind: "failed", message: error instanceof Error ? error.message : String(error) });
  }
}

async function sweep(request: SweepRequest): Promise<void> {
  await pause();
  if (request.id !== newest) return;
  try {
    const { sweepScenarios } = await import("./sweep-run.js");
    await sweepScenarios(
      request,
      { ...files, ...request.files },
      slicesFor(request.id, () => undefined),
      (swept) => self.postMessage(swept, { transfer: [...buffersIn(swept.result)] }),
      post,
    );
  } catch (error) {
    post({ id: request.id, kind: "failed", message: error instanceof Error ? error.message : String(error) });
  }
}

async function check(request: CheckRequest): Promise<void> {
  try {
    const parsed = parseComparison(request.file, { ...files, ...request.files });
    if (!parsed.ok) post({ id: request.id, kind: "faults", faults: parsed.faults });
    else
      await (await import("./physics-run.js")).checkWithPhysics(
        request,
        parsed,
        slicesFor(request.id, progressTo(request.id)),
        post,
      );
  } catch (error) {
    post({ id: request.id, kind: "failed", message: error instanceof Error ? error.message : String(error) });
  }
}

async function answer(request: CompareRequest): Promise<void> {
  await pause();
  if (request.id !== newest) return;
  try {
    if (memory && request.tree === "mean" && seasonTookMs > previewFromMs) await preview(request, memory);
    if (request.id === newest) await season(request);
  } catch (error) {
    post({ id: request.id, kind: "failed", message: error instanceof Error ? error.message : String(error) });
  }
}

/** The days in view, begun from the soil as it was in the last season. Its faults are left for the season to tell. */
async function preview(
  { id, preview: { file, firstDay }, files: own }: CompareRequest,
  from: SoilMemory,
): Promise<void> {
  const began = performance.now();
  const parsed = parseComparison(file, { ...files, ...own });
  if (!parsed.ok) return;
  const options: SlicedOptions = {
    trees: ["mean"],
    defaultsUsed: parsed.defaultsUsed,
    prepare: (simulation, arm) => recall(from, arm, firstDay, simulation),
  };
  const result = await slicedCompare(
    parsed.comparison,
    options,
    slicesFor(id, () => undefined),
  );
  if (result === undefined) return;
  const ground = groundFacts(parsed.comparison.block.tree);
  give({ id, kind: "preview", result, ground, firstDay, tookMs: performance.now() - began });
}

async function season({ id, file, tree, files: own }: CompareRequest): Promise<void> {
  const began = performance.now();
  const parsed = parseComparison(file, { ...files, ...own });
  if (!parsed.ok) {
    post({ id, kind: "faults", faults: parsed.faults });
    return;
  }
  const slices = slicesFor(id, progressTo(id));
  const trees: SlicedOptions["trees"] = tree === "mean" ? ["mean"] : [tree, "mean"];
  const result = await slicedCompare(parsed.comparison, { trees, defaultsUsed: parsed.defaultsUsed }, slices);
  if (result === undefined) return;
  seasonTookMs = performance.now() - began;
  memory = remember(result.arms.map((arm) => arm.result));
  const ground = groundFacts(parsed.comparison.block.tree);
  give({ id, kind: "season", result, ground, firstDay: 0, tookMs: seasonTookMs });
}

/** Tells the page how far the work is, not more often than one can read. */
function progressTo(id: number): Slices["progress"] {
  let lastPost = performance.now();
  return (done, all) => {
    if (performance.now() - lastPost < progressEveryMs) return;
    lastPost = performance.now();
    post({ id, kind: "progress", done, all });
  };
}

function slicesFor(id: number, progress: Slices["progress"]): Slices {
  return { outdated: () => id !== newest, pause, now: () => performance.now(), progress };
}

/** Resolves after messages that are waiting have been received. */
function pause(): Promise<void> {
  return new Promise((resolve) => {
    door.port1.onmessage = () => resolve();
    door.port2.postMessage(null);
  });
}

/** Sends an answer without copying its arrays. */
function give(message: Extract<WorkerMessage, Answer>): void {
  self.postMessage(message, { transfer: [...buffersIn(message.result)] });
}

/** Every array buffer in a result, once. */
function buffersIn(value: unknown, found = new Set<ArrayBuffer>()): Set<ArrayBuffer> {
  if (ArrayBuffer.isView(value)) found.add(value.buffer as ArrayBuffer);
  else if (typeof value === "object" && value !== null) for (const part of Object.values(value)) buffersIn(part, found);
  return found;
}

function post(message: WorkerMessage): void {
  self.postMessage(message);
}
