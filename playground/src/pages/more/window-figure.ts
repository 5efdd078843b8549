import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { column } from "rootledger";
import "../../charts/number-table.js";
import "../../charts/window-bar.js";
import { rowOf } from "../../charts/arm-picture.js";
import { nextTurn } from "../../charts/turn.js";
import type { Scene } from "../../state/scene.js";
import { amount } from "../../text/number-format.js";
import { bare, depthText, waterText } from "../../text/quantity.js";
import { soilMoreWords } from "../../text/soil-more-words.js";
import { words } from "../../text/words.js";
import type { ArmView } from "../arm-pictures.js";
import { pageStyles } from "../page-styles.js";
import { airReturn } from "./air-return.js";

/** What each soil lends between its limits, to one scale, with the day's demand as a bottle, and how soon its air is back. */
export class WindowFigure extends LitElement {
  static override properties = { scene: { attribute: false }, views: { attribute: false } };
  declare scene: Scene;
  /** By soil and programme. */
  declare views: readonly (readonly ArmView[])[];

  static override styles = [
    pageStyles,
    css`
      :host { border-top: 1.5px solid var(--ink); padding: 1.1rem 0 1.6rem; }
      h2 { font-size: var(--size-body); font-weight: 650; line-height: 1.35; margin: 0 0 0.5rem; text-wrap: balance; }
      .beside { display: grid; grid-template-columns: minmax(0, 34rem) minmax(0, 1fr); gap: 1rem 2.5rem; align-items: start; }
      ul { margin: 0 0 0.6rem; padding-left: 1.1em; }
      @media (max-width: 900px) { .beside { grid-template-columns: minmax(0, 1fr); } }
    `,
  ];

  /** Drawn in a task of its own. */
  protected override async scheduleUpdate(): Promise<void> {
    await nextTurn();
    super.scheduleUpdate();
  }

  override render(): TemplateResult | typeof nothing {
    const { scene, views } = this;
    if (!views || views.length === 0) return nothing;
    const w = soilMoreWords();
    const first = views.map((arms) => arms[0]!);
    const names = scene.soils.map(({ texture, structure }) => words.soil.name(texture, structure));
    const lends = first.map(({ result: { window } }) => window.waterAtAirReturnMm - window.waterAtPullLimitMm);
    const day = Math.floor(scene.hour / 24);
    const { days } = first[0]!.result;
    const wanted = column(days, "wanted").values[day * days.trees + first[0]!.tree] ?? 0;
    const tubes = first.map(({ result: { window }, picture }, i) => {
      const row = rowOf(picture, scene.hour) ?? 0;
      return {
        name: names[i]!,
        lendsL: window.litresPerTree,
        lendsText: `${depthText(lends[i]!)}, ${waterText(window.litresPerTree)}`,
        level: (picture.storageMm[row]! - window.waterAtPullLimitMm) / lends[i]!,
      };
    });
    const { pulses, gapMinutes } = scene.programmes[0]!;
    const air = first.map(({ result, tree }) => airReturn(result, tree, pulses > 1 ? gapMinutes / 60 : 0));
    const table = () => ({
      caption: w.windowTable,
      head: [w.soil, w.lendsMm(), w.lendsL(), w.hoursToAir],
      rows: first.map(({ result: { window } }, i) => [
        names[i]!,
        bare("depth", lends[i]!),
        bare("water", window.litresPerTree),
        air[i]!.medianH === undefined ? "" : amount(air[i]!.medianH, 2),
      ]),
    });
    return html`<figure><h2>${w.window(names, lends, wanted)}</h2><div class="beside">
      <rl-window-bar .tubes=${tubes} .demandL=${wanted}></rl-window-bar>
      <div><ul class="regains">${air.map(({ openings, medianH }, i) => html`<li>${openings === 0 ? w.regainsNone(names[i]!) : medianH === undefined ? w.regainsNever(names[i]!) : w.regains(names[i]!, `${amount(medianH, 2)} h`)}</li>`)}</ul>
        <p class="small">${w.windowNote}</p><rl-number-table .data=${table}></rl-number-table></div>
    </div></figure>`;
  }
}

customElements.define("rl-window-figure", WindowFigure);
