import { css, html, LitElement, type TemplateResult } from "lit";
import { words } from "../text/words.js";
import { crossHatch, dots } from "./canvas-patterns.js";
import { fullWater, waterColours } from "./geometry/water-scale.js";
import { SizeController } from "./size-controller.js";
import { onColoursChanged, soilColours } from "./theme-colours.js";

const patchEm = { width: 2.2, height: 1.1 };

/** How to read the soil: the water scale and the two patterns, painted as they are in the pictures. */
export class SoilKey extends LitElement {
  static override styles = css`
    :host { display: flex; flex-wrap: wrap; gap: 0.3rem 1.6rem; align-items: center; font-size: var(--size-small); color: var(--ink-quiet); }
    span { display: inline-flex; align-items: center; gap: 0.5em; }
    canvas { width: 2.2rem; height: 1.1rem; }
    .scale { width: 9rem; outline: 1px solid var(--rule-strong); }
  `;

  #size = new SizeController(this);
  #stopListening = (): void => {};

  override connectedCallback(): void {
    super.connectedCallback();
    this.#stopListening = onColoursChanged(() => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stopListening();
  }

  override render(): TemplateResult {
    const w = words.key;
    return html`
      <span><canvas class="scale" width="256" height="1" aria-hidden="true"></canvas>${w.water(0, fullWater)}</span>
      <span><canvas class="airless" aria-hidden="true"></canvas>${w.airless}</span>
      <span><canvas class="thirsty" aria-hidden="true"></canvas>${w.thirsty}</span>
    `;
  }

  override updated(): void {
    const colours = soilColours();
    const scale = waterColours(colours.dry, colours.middle, colours.full);
    const image = new ImageData(256, 1);
    for (let i = 0; i < 256; i++) image.data.set([scale[3 * i]!, scale[3 * i + 1]!, scale[3 * i + 2]!, 255], 4 * i);
    this.#context("scale").putImageData(image, 0, 0);
    const { em } = this.#size;
    const density = Math.min(2, devicePixelRatio);
    this.#patch("airless", colours.full, crossHatch(colours.airless, colours.halo, em, density), em * density);
    this.#patch("thirsty", colours.dry, dots(colours.thirsty, colours.halo, em, density), em * density);
  }

  #patch(name: string, ground: string, tile: HTMLCanvasElement, unit: number): void {
    const context = this.#context(name);
    context.canvas.width = Math.round(patchEm.width * unit);
    context.canvas.height = Math.round(patchEm.height * unit);
    for (const fill of [ground, context.createPattern(tile, "repeat")!]) {
      context.fillStyle = fill;
      context.fillRect(0, 0, context.canvas.width, context.canvas.height);
    }
  }

  #context(name: string): CanvasRenderingContext2D {
    return this.renderRoot.querySelector<HTMLCanvasElement>(`.${name}`)!.getContext("2d")!;
  }
}

customElements.define("rl-soil-key", SoilKey);
