import { html, nothing, type TemplateResult } from "lit";
import { limits } from "../fields/limits.js";
import "../fields/programme-sentence.js";
import type { DemoFile } from "../state/demo.js";
import { changedProgramme, type ProgrammePlan } from "../state/programme-plan.js";
import type { ProgrammeScene, Scene } from "../state/scene.js";
import { duplicated, removed } from "../state/scene-edits.js";
import { words } from "../text/words.js";
import { lazyDetails } from "./lazy-details.js";

export interface ProgrammeColumn {
  readonly scene: Scene;
  readonly file: DemoFile;
  readonly plan: ProgrammePlan;
  readonly i: number;
  readonly change: (edit: (scene: Scene) => Scene) => void;
}

/** Whether a programme has something that its sentence leaves out. */
const hasMore = ({ rule, againTime, lines }: ProgrammeScene): boolean =>
  rule !== "calendar" || againTime !== "" || lines !== 0;

/** One programme: its sentence, what it brings, what else decides it, and its copy or end. */
export function programmeColumn({ scene, file, plan, i, change }: ProgrammeColumn): TemplateResult {
  const w = words.programmes;
  const p = scene.programmes[i]!;
  const letter = "ABCD"[i]!;
  const edited = (e: CustomEvent<Partial<ProgrammeScene>>): void =>
    change((s) => changedProgramme(s, i, e.detail, file));
  const decided = p.rule === "replace-use" || p.rule === "depletion";
  const brings = decided ? w.decides : `${w.brings(plan.runLitres, plan.openHours, plan.litresPerDay)}.`;
  const [least, most] = limits.programmes;
  const count = scene.programmes.length;
  return html`<div ?data-shown=${i === scene.shown} @programme-changed=${edited}>
    <rl-programme-sentence .programme=${p} .pulseMinutes=${plan.pulseMinutes} .letter=${letter}></rl-programme-sentence>
    <p class="small">${brings} ${w.flowing(plan.emitters, plan.flowLPerH, plan.m3PerHaDay)}</p>
    ${lazyDetails({
      summary: w.more,
      open: hasMore(p),
      load: () => import("../fields/programme-more.js"),
      content: html`<rl-programme-more .programme=${p} .blockLines=${scene.block.lines}></rl-programme-more>`,
    })}
    <p class="quiet">
      ${count < most ? html`<button type="button" aria-label=${w.duplicateLabel(letter)} @click=${() => change((s) => duplicated(s, i))}>${w.duplicate}</button>` : nothing}
      ${count > least ? html`<button type="button" aria-label=${w.removeLabel(letter)} @click=${() => change((s) => removed(s, i))}>${w.remove}</button>` : nothing}
    </p>
  </div>`;
}
