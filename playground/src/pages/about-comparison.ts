import { html, type TemplateResult } from "lit";
import { amount } from "../text/number-format.js";
import { words } from "../text/words.js";
import type { Answer } from "../worker/protocol.js";

/** What a reader must know to judge the pictures: whose numbers they are, notes, defaults with their sources, version. */
export function aboutComparison({ result, tookMs }: Answer): TemplateResult {
  return html`<section class="about small">
    <p>${words.about.example}</p>
    <p>${words.about.never} ${words.section.smoothed} ${words.tree.sectionIsMean}</p>
    ${[...new Set(result.arms.flatMap((arm) => arm.result.notes))].map((note) => html`<p>${words.about.note} <span lang="en">${note}.</span></p>`)}
    <p>${words.about.computedHere(result.version, tookMs / 1000)}</p>
    <details><summary>${words.about.defaults} (${amount(result.defaultsUsed.length)})</summary>
      <ul lang="en">${result.defaultsUsed.map((d) => html`<li>${d.path}: ${d.value}. ${d.source}</li>`)}</ul></details>
  </section>`;
}
