import { html, nothing, type TemplateResult } from "lit";
import "../../fields/choice-field.js";
import { limits } from "../../fields/limits.js";
import "../../fields/number-field.js";
import type { BlockScene, Scene, SoilScene } from "../../state/scene.js";
import { withProgramme, withSoil } from "../../state/scene-edits.js";
import { structureWords, textures } from "../../state/soil-words.js";
import { blockWords } from "../../text/block-words.js";
import { words } from "../../text/words.js";

/** Fields of trees, lines, roots, soils and valve, each telling what changed. */
export function blockControls(scene: Scene): TemplateResult {
  const w = blockWords();
  const { block } = scene;
  const number = <K extends keyof BlockScene & keyof typeof limits>(
    key: K,
    label: string,
    decimals = 2,
    step = 0.1,
  ) => html`
    <rl-number-field named .label=${label} .value=${block[key]} .limits=${limits[key]} .decimals=${decimals} .step=${step}
      @number-changed=${(e: CustomEvent<number>) => edit(e, { [key]: decimals === 0 ? Math.round(e.detail) : e.detail })}></rl-number-field>`;
  const check = (key: "drains" | "compensating", label: string) =>
    html`<label><input type="checkbox" .checked=${block[key]} @change=${(e: Event) => edit(e, { [key]: (e.target as HTMLInputElement).checked })}>${label}</label>`;
  const flow = scene.programmes[scene.shown]!.flowLPerH;
  return html`<form @submit=${(e: Event) => e.preventDefault()}>
    <fieldset><legend>${w.heading.trees}</legend>${number("treeSpacingM", w.treeSpacing)}${number("rowSpacingM", w.rowSpacing)}${number("canopyDiameterM", w.canopy)}</fieldset>
    <fieldset><legend>${w.heading.lines}</legend>${number("lines", w.lines, 0, 1)}${block.lines > 1 ? number("lineDistanceM", w.lineDistance) : nothing}${number("emitterSpacingM", w.emitterSpacing)}
      <rl-number-field named .label=${w.flowLabel()} .value=${flow} .limits=${limits.flowLPerH} .quantity=${"water"} .step=${0.1}
        @number-changed=${(e: CustomEvent<number>) => tell(e, (s) => s.programmes.reduce((next, _, i) => withProgramme(next, i, { flowLPerH: e.detail }), s))}></rl-number-field>
      ${number("wettedRadiusM", w.wettedRadius)}${check("drains", w.drains)}${block.drains ? html`<p class="small">${w.drainsNote}</p>` : nothing}</fieldset>
    <fieldset><legend>${w.heading.roots}</legend>
      <rl-choice-field .label=${w.rootKind} .value=${block.roots} .choices=${(["mature", "disc"] as const).map((value) => ({ value, text: w.rootKinds[value] }))}
        @choice-changed=${(e: CustomEvent<BlockScene["roots"]>) => edit(e, { roots: e.detail })}></rl-choice-field>
      ${block.roots === "disc" ? number("rootRadiusM", w.rootRadius) : nothing}${number("rootDepthCm", w.rootDepth, 0, 5)}</fieldset>
    <fieldset><legend>${w.heading.soil}</legend>${scene.soils.map((soil, i) => soilFields(soil, i))}</fieldset>
    <fieldset><legend>${w.heading.valve}</legend>${number("sectorTrees", w.sectorTrees, 0, 10)}
      <rl-number-field named .label=${w.smallestFlow()} .value=${block.smallestFlowLPerH} .limits=${limits.smallestFlowLPerH} .quantity=${"water"} .decimals=${0} .step=${100}
        @number-changed=${(e: CustomEvent<number>) => edit(e, { smallestFlowLPerH: e.detail })}></rl-number-field>
      ${check("compensating", w.compensating)}</fieldset>
    <fieldset><legend>${w.heading.water}</legend>
      <rl-number-field named .label=${w.waterEc()} .value=${block.waterEcDsPerM} .limits=${limits.waterEcDsPerM} .quantity=${"salt"} .decimals=${2} .step=${0.1}
        @number-changed=${(e: CustomEvent<number>) => edit(e, { waterEcDsPerM: e.detail })}></rl-number-field>
      ${block.waterEcDsPerM > 0 ? html`<p class="small">${w.saltNote}</p>` : nothing}</fieldset>
  </form>`;
}

function soilFields(soil: SoilScene, i: number): TemplateResult {
  const name = words.soil;
  const set = (e: Event, change: Partial<SoilScene>): void => tell(e, (s) => withSoil(s, i, change));
  return html`<rl-choice-field .label=${blockWords().soilLabel(i + 1)} .value=${soil.texture} .choices=${textures.map((value) => ({ value, text: name.name(value, "ordinary") }))}
      @choice-changed=${(e: CustomEvent<string>) => set(e, { texture: e.detail })}></rl-choice-field>
    <rl-choice-field .label=${name.structureLabel} .value=${soil.structure} .choices=${structureWords.map((value) => ({ value, text: name.structures[value] }))}
      @choice-changed=${(e: CustomEvent<SoilScene["structure"]>) => set(e, { structure: e.detail })}></rl-choice-field>`;
}

function edit(event: Event, detail: Partial<BlockScene>): void {
  event.target?.dispatchEvent(new CustomEvent("block-edited", { detail, bubbles: true, composed: true }));
}

function tell(event: Event, detail: (scene: Scene) => Scene): void {
  event.target?.dispatchEvent(new CustomEvent("scene-edited", { detail, bubbles: true, composed: true }));
}
