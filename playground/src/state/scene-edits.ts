import { limits } from "../fields/limits.js";
import type { BlockScene, ProgrammeScene, Scene, SoilScene } from "./scene.js";

export function withProgramme(scene: Scene, i: number, change: Partial<ProgrammeScene>): Scene {
  return { ...scene, programmes: scene.programmes.map((p, k) => (k === i ? { ...p, ...change } : p)) };
}

/** One more programme, a copy of one that is there. */
export function duplicated(scene: Scene, i: number): Scene {
  const { programmes } = scene;
  if (programmes.length >= limits.programmes[1]) return scene;
  return { ...scene, programmes: [...programmes, programmes[i]!], shown: programmes.length };
}

export function removed(scene: Scene, i: number): Scene {
  const programmes = scene.programmes.filter((_, k) => k !== i);
  if (programmes.length < limits.programmes[0]) return scene;
  return { ...scene, programmes, shown: Math.min(scene.shown, programmes.length - 1) };
}

export function withSoil(scene: Scene, i: number, change: Partial<SoilScene>): Scene {
  return { ...scene, soils: scene.soils.map((soil, k) => (k === i ? { ...soil, ...change } : soil)) };
}

/** A changed block. Another layout has other places for emitters, so all of them are open again; lines that stay full have no over-fed tree. */
export function withBlock(scene: Scene, change: Partial<BlockScene>): Scene {
  const moved = ["treeSpacingM", "lines", "emitterSpacingM"].some((key) => key in change) && !("plugged" in change);
  const block = { ...scene.block, ...change, ...(moved ? { plugged: [] } : {}) };
  return { ...scene, block, tree: !block.drains && scene.tree === "over-fed" ? "mean" : scene.tree };
}
