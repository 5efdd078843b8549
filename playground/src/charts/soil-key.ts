import { css, html, LitElement, type nothing, type PropertyValues, type TemplateResult } from "lit";
import { words } from "../text/words.js";
import { fullWater, waterColours } from "./geometry/water-scale.js";
import { SizeController } from "./size-controller.js";
import { statePatternStyles, statePatterns } from "./state-patterns.js";
import { onColoursChanged, soilColours } from "./theme-colours.js";

/** How to read the soil: the water scale and the two patterns. */
export class SoilKey extends LitElement {
  static override styles = [
    statePatternStyles,
    css`
      :host { display: flex; flex-wrap: wrap; gap: 0.3rem 1.6rem; align-items: center; font-size: var(--size-small); color: var(--ink-quiet); }
      span { display: inline-flex; align-items: center; gap: 0.5em; }
      canvas { width: 9em; height: 0.95em; border: 1px solid var(--rule-strong); }
      svg { width: 1.9em; height: 0.95em; }
      .thirsty-ground { fill: var(--water-dry); }
      .airless-ground { fill: var(--water-full); }
      .thirsty .mark { fill: var(--on-water-thirsty); stroke: var(--on-water-halo); stroke-width: 0.6; }
      .airless .mark-line { stroke: var(--on-water-halo); }
    `,
  ];

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

  override render(): TemplateResult | typeof nothing {
    const w = words.key;
    const swatch = (kind: "thirsty" | "airless") =>
      html`<svg class=${kind} aria-hidden="true"><defs>${statePatterns(this.#size.em)}</defs><rect width="100%" height="100%" fill="url(#${kind})"></rect></svg>`;
    return html`
      <span><canvas width="256" height="1" aria-hidden="true"></canvas>${w.water(0, fullWater)}</span>
      <span>${swatch("airless")}${w.airless}</span>
      <span>${swatch("thirsty")}${w.thirsty}</span>
    `;
  }

  override updated(_: PropertyValues): void {
    const context = this.renderRoot.querySelector("canvas")?.getContext("2d");
    if (!context) return;
    const { dry, middle, full } = soilColours();
    const colours = waterColours(dry, middle, full);
    const image = new ImageData(256, 1);
    for (let i = 0; i < 256; i++)
      image.data.set([colours[3 * i]!, colours[3 * i + 1]!, colours[3 * i + 2]!, 255], 4 * i);
    context.putImageData(image, 0, 0);
  }
}

customElements.define("rl-soil-key", SoilKey);
