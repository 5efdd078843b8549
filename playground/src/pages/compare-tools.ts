import { html, type TemplateResult } from "lit";
import { column } from "rootledger";
import type { DemoFile } from "../state/demo.js";
import type { ProgrammePlan } from "../state/programme-plan.js";
import type { Scene } from "../state/scene.js";
import { words } from "../text/words.js";
import type { Answer } from "../worker/protocol.js";
import { lazyDetails } from "./lazy-details.js";

export interface CompareTools {
  readonly scene: Scene;
  readonly file: DemoFile;
  readonly plans: readonly ProgrammePlan[];
  readonly season: Answer | undefined;
  readonly stale: boolean;
  /** The comparison file of the scene, and texts of its own. */
  readonly compared: () => object;
  readonly files: Readonly<Record<string, string>>;
}

/** What may be asked beside the programmes; each part's code comes when it is unfolded. */
export function compareTools({ scene, file, plans, season, stale, compared, files }: CompareTools): TemplateResult {
  const days = season?.result.arms[0]?.result.days;
  const dayEt0Mm = days && column(days, "et0").values[Math.floor(scene.hour / 24) * days.trees];
  const { powerFrom, powerTo, skipRainMm, longestRunMinutes } = scene.limits;
  return html`<div class="tools">
    ${lazyDetails({
      summary: words.tools.need,
      open: scene.need.et0Mm > 0 || scene.need.kc > 0,
      load: () => import("./tools/need-figure.js"),
      content: html`<rl-need-figure .scene=${scene} .file=${file} .plans=${plans} .dayEt0Mm=${dayEt0Mm}></rl-need-figure>`,
    })}
    ${lazyDetails({
      summary: words.tools.limits,
      open: (powerFrom !== "" && powerTo !== "") || skipRainMm > 0 || longestRunMinutes > 0,
      load: () => import("./tools/limits-control.js"),
      content: html`<rl-limits-control .scene=${scene} .plans=${plans} .arms=${stale ? undefined : season?.result.arms}></rl-limits-control>`,
    })}
    ${lazyDetails({
      summary: words.tools.unsure,
      open: false,
      load: () => import("./tools/unsure-control.js"),
      content: html`<rl-unsure-control .scene=${scene} .compared=${compared} .files=${files} .seasonReady=${season !== undefined && !stale}></rl-unsure-control>`,
    })}
  </div>`;
}
