import { parseComparison } from "rootledger/scenario";
import weatherText from "../../../data/demo/weather.csv?raw";
import type { Answer, CompareRequest, WorkerMessage } from "./protocol.js";
import { slicedCompare } from "./sliced-compare.js";

const files: Readonly<Record<string, string>> = { "weather.csv": weatherText };
/** A season that takes less than this needs no preview. */
const previewFromMs = 300;
const progressEveryMs = 100;

let newest = 0;
let seasonTookMs = Number.POSITIVE_INFINITY;
const door = new MessageChannel();

self.onmessage = (event: MessageEvent<CompareRequest>) => {
  newest = event.data.id;
  void answer(event.data);
};

async function answer({ id, file, preview }: CompareRequest): Promise<void> {
  await pause();
  if (id !== newest) return;
  try {
    if (preview && seasonTookMs > previewFromMs) await run(id, "preview", preview.file, preview.firstDay);
    if (id === newest) await run(id, "season", file, 0);
  } catch (error) {
    post({ id, kind: "failed", message: error instanceof Error ? error.message : String(error) });
  }
}

async function run(id: number, kind: "preview" | "season", file: object, firstDay: number): Promise<void> {
  const began = performance.now();
  const parsed = parseComparison(file, files);
  if (!parsed.ok) {
    if (kind === "season") post({ id, kind: "faults", faults: parsed.faults });
    return;
  }
  let lastPost = began;
  const result = await slicedCompare(parsed.comparison, parsed.defaultsUsed, {
    outdated: () => id !== newest,
    pause,
    now: () => performance.now(),
    progress: (done, all) => {
      if (kind === "preview" || performance.now() - lastPost < progressEveryMs) return;
      lastPost = performance.now();
      post({ id, kind: "progress", done, all });
    },
  });
  if (result === undefined) return;
  const tookMs = performance.now() - began;
  if (kind === "season") seasonTookMs = tookMs;
  const { limits, roots } = parsed.comparison.block.tree;
  const ground = { airLimitFraction: limits.airLimitFraction, rootDepthCm: roots.depthCm, topShare: roots.topShare };
  const message: { kind: typeof kind } & Answer = { id, kind, result, ground, firstDay, tookMs };
  self.postMessage(message, { transfer: [...buffersIn(result)] });
}

/** Resolves after messages that are waiting have been received. */
function pause(): Promise<void> {
  return new Promise((resolve) => {
    door.port1.onmessage = () => resolve();
    door.port2.postMessage(null);
  });
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
