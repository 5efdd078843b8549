import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { cm3PerL } from "rootledger/units";
import { whole } from "../text/number-format.js";
import { shownIn } from "../text/quantity.js";
import { words } from "../text/words.js";
import type { ArmView } from "./arm-pictures.js";

/** All that came in, went out and was stored on one soil, programmes side by side. */
export class SeasonLedger extends LitElement {
  static override properties = { views: { attribute: false } };
  declare views: readonly ArmView[] | undefined;

  static override styles = css`
    :host { display: block; }
    table { border-collapse: collapse; width: 100%; font-size: var(--size-small); }
    caption { text-align: left; color: var(--ink-quiet); padding-bottom: 0.35em; }
    th, td { text-align: right; padding: 0.2em 0 0.2em 0.6em; font-weight: 400; border-bottom: 1px solid var(--rule); }
    th:first-child { text-align: left; padding-left: 0; }
    thead th { font-weight: 650; }
    abbr { text-decoration: none; }
    .sum th, .sum td { border-bottom: 1.5px solid var(--ink); }
    .note { color: var(--ink-quiet); font-size: var(--size-small); margin: 0.4em 0 0; }
  `;

  override render(): TemplateResult | typeof nothing {
    const { views } = this;
    if (!views || views.length === 0) return nothing;
    const w = words.ledger;
    const litres = (of: (v: ArmView) => number): string[] => views.map((v) => whole(shownIn("water", of(v) / cm3PerL)));
    const out = (cm3: (v: ArmView) => Float64Array): string[] => litres((v) => -cm3(v)[v.tree]!);
    const held = (name: string, cm3: (v: ArmView) => Float64Array): [string, string[], string][] =>
      views.some((v) => cm3(v)[v.tree]! > 0) ? [[name, out(cm3), ""]] : [];
    const rows: [string, string[], string][] = [
      [w.emitters, litres((v) => v.result.ledger.emitterCm3[v.tree]!), ""],
      [w.rain, litres((v) => v.result.ledger.rainCm3[v.tree]!), "sum"],
      ...held(w.heldByLeaves, (v) => v.result.ledger.heldByCanopyCm3),
      ...held(w.heldByLayer, (v) => v.result.ledger.heldByLayerCm3),
      [w.drank, out((v) => v.result.ledger.transpirationCm3), ""],
      [w.evaporated, out((v) => v.result.ledger.evaporationCm3), ""],
      [w.runoff, out((v) => v.result.ledger.runoffCm3), ""],
      [w.bottom, out((v) => v.result.ledger.bottomCm3), "sum"],
      [w.store, litres((v) => v.result.ledger.endCm3[v.tree]! - v.result.ledger.startCm3[v.tree]!), ""],
      [w.residual, litres((v) => v.result.ledger.residualCm3[v.tree]!), ""],
    ];
    const worst = Math.max(...views.map((v) => Math.abs(v.result.ledger.residualFraction[v.tree]!)));
    return html`
      <table>
        <caption>${w.unit()}</caption>
        <thead><tr><td></td>${views.map((v) => html`<th scope="col"><abbr title=${v.picture.programme}>${v.picture.letter}</abbr></th>`)}</tr></thead>
        <tbody>${rows.map(([name, cells, kind]) => html`<tr class=${kind}><th scope="row">${name}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
      </table>
      <p class="note">${w.residualNote(worst)}</p>
    `;
  }
}

customElements.define("rl-season-ledger", SeasonLedger);
