import { html, LitElement, nothing, type TemplateResult } from "lit";
import { type EmitterPlace, emittersOfTree, openNearest, openWithin, type PlugPlan, plugPlan } from "rootledger/lines";
import "../../charts/row-plan.js";
import { lineOffsetsM } from "../../state/block-file.js";
import type { DemoFile } from "../../state/demo.js";
import type { ProgrammePlan } from "../../state/programme-plan.js";
import type { BlockScene, Scene } from "../../state/scene.js";
import { withBlock } from "../../state/scene-edits.js";
import { blockWords } from "../../text/block-words.js";
import { waterText } from "../../text/quantity.js";
import { words } from "../../text/words.js";
import { pageStyles } from "../page-styles.js";
import { whenNear } from "../when-near.js";
import "../../fields/number-field.js";
import { blockControls } from "./block-controls.js";
import { blockStyles } from "./block-styles.js";
import "./weather-drop.js";

/** Emitters that a young tree is often left with; common practice, no source. */
const fewEmitters = 4;

/** The block from above: trees, lines, emitters to open or plug, and where their litres land. */
export class BlockPage extends LitElement {
  static override properties = {
    file: { attribute: false },
    scene: { attribute: false },
    plans: { attribute: false },
    ownWeather: { type: Boolean },
    needL: { state: true },
    notice: { state: true },
  };
  declare file: DemoFile;
  declare scene: Scene;
  declare plans: readonly ProgrammePlan[];
  /** The weather is the person's own. */
  declare ownWeather: boolean;
  declare needL: number;
  declare notice: string;

  static override styles = [pageStyles, blockStyles];

  constructor() {
    super();
    this.ownWeather = false;
    this.needL = 6;
    this.notice = "";
    this.addEventListener("emitter-toggled", (event) => this.#toggle((event as CustomEvent<number>).detail));
    this.addEventListener("block-edited", (event) => this.#change((event as CustomEvent<Partial<BlockScene>>).detail));
  }

  /** The years ahead come when their place is near the window. */
  override firstUpdated(): void {
    whenNear(this.renderRoot.querySelector("rl-years-figure"), () => import("./years-figure.js"));
  }

  override render(): TemplateResult {
    const w = blockWords();
    const { block } = this.scene;
    const emitters = this.#emitters();
    if (emitters === undefined) {
      return html`<h1>${w.cannot}</h1><slot name="status"></slot><div class="sheet"><div></div>${blockControls(this.scene)}</div>`;
    }
    const open = this.#open(emitters);
    const plan = this.#plan(open);
    const disc = block.roots === "disc";
    return html`
      <h1>${w.title(plan.openPerTree, emitters.length, disc ? plan.usefulShare : undefined)}</h1>
      <slot name="status"></slot>
      <div class="sheet">
        <div>
          <figure>
            <rl-row-plan .data=${{
              emitters,
              open,
              treeSpacingM: block.treeSpacingM,
              rowSpacingM: block.rowSpacingM,
              canopyDiameterM: block.canopyDiameterM,
              offsetsM: lineOffsetsM(block.lines, block.lineDistanceM),
              wettedRadiusM: block.wettedRadiusM,
              rootRadiusM: disc ? block.rootRadiusM : undefined,
            }}></rl-row-plan>
            <p class="small key"><span class="item"><span class="patch roots"></span> ${w.key.roots}</span><span class="item"><span class="patch wet"></span> ${w.key.wet}</span><span class="item"><span class="patch canopy"></span> ${w.key.canopy}</span><span class="item"><span class="dot"></span> ${w.key.open}</span><span class="item"><span class="dot shut"></span> ${w.key.plugged}</span></p>
            <p class="small">${w.planKeys}</p>
            ${plan.pluggedPerTree > 0 ? html`<p class="small">${w.countOnly} ${this.scene.programmes[this.scene.shown]!.rule === "calendar" ? w.thenRuns(this.scene.sameLitres) : nothing}</p>` : nothing}
            <div class="buttons">
              <button type="button" @click=${() => this.#set(emitters.map(() => true))}>${w.openAll}</button>
              <button type="button" @click=${() => this.#set(openNearest(emitters, Math.min(fewEmitters, emitters.length)))}>${w.openNearest(Math.min(fewEmitters, emitters.length))}</button>
              ${disc ? html`<button type="button" @click=${() => this.#set(openWithin(emitters, block.rootRadiusM))}>${w.openOnRoots}</button>` : nothing}
            </div>
            <div role="status">${this.notice === "" ? nothing : html`<p>${this.notice}</p>`}</div>
          </figure>
          ${this.#litres(plan, disc)}
          <rl-years-figure .scene=${this.scene} .file=${this.file} .openNow=${plan.openPerTree}></rl-years-figure>
          <rl-weather-drop .current=${this.file.weather.name} .own=${this.ownWeather}></rl-weather-drop>
        </div>
        ${blockControls(this.scene)}
      </div>
    `;
  }

  #litres(plan: PlugPlan, disc: boolean): TemplateResult {
    const w = blockWords();
    const { scene } = this;
    const programme = scene.programmes[scene.shown]!;
    const dayL = this.plans[scene.shown]!.litresPerDay;
    const useful = disc ? plan.usefulShare : 1;
    const { sectorFlow } = plan;
    return html`<figure>
      <h2>${w.litres(`${"ABCD"[scene.shown]}, ${words.programmes.name(programme)},`, waterText(dayL))}</h2>
      <svg class="bar" viewBox="0 0 1000 26" preserveAspectRatio="none" role="img" aria-label=${`${w.onRoots(waterText(dayL * useful))}; ${w.onNothing(waterText(dayL * (1 - useful)))}`}>
        <defs><pattern id="off" width="9" height="9" patternUnits="userSpaceOnUse"><path class="hatch" d="M0 9L9 0"></path></pattern></defs>
        <rect class="on" width=${1000 * useful} height="26"></rect><rect fill="url(#off)" x=${1000 * useful} width=${1000 * (1 - useful)} height="26"></rect>
        <rect class="frame" x="0.5" y="0.5" width="999" height="25"></rect>
      </svg>
      <p class="two"><strong>${w.onRoots(waterText(dayL * useful))}</strong><strong>${w.onNothing(waterText(dayL * (1 - useful)))}</strong></p>
      ${
        disc
          ? html`<p><rl-number-field named .label=${w.need} .value=${this.needL} .limits=${[0.1, 500]} .decimals=${1} .quantity=${"water"} @number-changed=${(e: CustomEvent<number>) => (this.needL = e.detail)}></rl-number-field>
              ${useful > 0 ? w.goesOut(this.needL, this.needL / useful) : nothing}</p>`
          : nothing
      }
      <p>${w.flow(plan.flowLPerH, plan.applicationMmPerH)} ${w.wetted(plan.wettedShare)} ${sectorFlow ? w.sectorFlow(sectorFlow.nowLPerH, sectorFlow.allOpenLPerH) : nothing}</p>
      ${plan.warnings.map((warning) => html`<p class="warning">${w.warning(warning)}</p>`)}
    </figure>`;
  }

  #layout() {
    const { block } = this.scene;
    return {
      offsetsM: lineOffsetsM(block.lines, block.lineDistanceM),
      treeSpacingM: block.treeSpacingM,
      rowSpacingM: block.rowSpacingM,
      emitterSpacingM: block.emitterSpacingM,
    };
  }

  #emitters(): EmitterPlace[] | undefined {
    const { treeSpacingM, emitterSpacingM } = this.scene.block;
    return emitterSpacingM > treeSpacingM ? undefined : emittersOfTree(this.#layout());
  }

  #open(emitters: readonly EmitterPlace[]): boolean[] {
    const plugged = new Set(this.scene.block.plugged);
    const open = emitters.map((_, i) => !plugged.has(i));
    return open.some(Boolean) ? open : emitters.map(() => true);
  }

  #plan(open: readonly boolean[]): PlugPlan {
    const { scene } = this;
    const { block } = scene;
    return plugPlan({
      layout: this.#layout(),
      emitterFlowLPerH: scene.programmes[scene.shown]!.flowLPerH,
      open,
      wettedRadiusM: block.wettedRadiusM,
      rootRadiusM: block.rootRadiusM,
      canopyDiameterM: block.canopyDiameterM,
      pressureCompensating: block.compensating,
      ...(block.sectorTrees > 0
        ? { sector: { trees: block.sectorTrees, smallestFlowLPerH: block.smallestFlowLPerH } }
        : {}),
    });
  }

  #toggle(i: number): void {
    const emitters = this.#emitters();
    if (emitters === undefined) return;
    this.#set(this.#open(emitters).map((is, k) => (k === i ? !is : is)));
  }

  #set(open: readonly boolean[]): void {
    this.notice = open.some(Boolean) ? "" : blockWords().lastOne;
    if (open.some(Boolean)) this.#change({ plugged: open.flatMap((is, i) => (is ? [] : [i])) });
  }

  #change(change: Partial<BlockScene>): void {
    const detail = (scene: Scene): Scene => withBlock(scene, change);
    this.dispatchEvent(new CustomEvent("scene-edited", { detail, bubbles: true, composed: true }));
  }
}

customElements.define("rl-block-page", BlockPage);
