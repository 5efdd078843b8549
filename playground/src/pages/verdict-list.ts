import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import type { ComparisonResult, Difference } from "rootledger/compare";
import { words } from "../text/words.js";
import { type DrawsView, stripRows, unsureBand } from "./draws-view.js";
import { neighboursOf } from "./neighbours.js";

/** Measures told one by one; the order is that of the picture: roots first, then water. */
const told = ["thirsty", "airless", "transpiration", "below-roots", "evaporation"];

/** One sentence per measure and pair of programmes, each with its number and its floor. */
export class VerdictList extends LitElement {
  static override properties = {
    result: { attribute: false },
    draws: { attribute: false },
    soil: { type: String },
    tree: { type: String },
    letters: { attribute: false },
  };
  declare result: ComparisonResult | undefined;
  declare draws: DrawsView;
  declare soil: string;
  declare tree: string;
  declare letters: readonly string[];

  static override styles = css`
    :host { display: block; }
    h4 { font-size: var(--size-body); margin: 0.9em 0 0.25em; font-weight: 650; }
    ul { margin: 0; padding: 0; list-style: none; }
    li { margin: 0.35em 0; line-height: 1.35; }
    .unclear, .mixed { color: var(--ink-quiet); }
    details summary { cursor: pointer; margin-top: 0.9em; }
    summary:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  `;

  override render(): TemplateResult | typeof nothing {
    const { result } = this;
    if (!result) return nothing;
    const { names, neighbours } = neighboursOf(result);
    const far = result.changes.filter((c) => !neighbours.includes(c));
    return html`
      ${neighbours.map((change) => this.#pair(change, names))}
      ${far.map(
        (change) =>
          html`<details><summary>${this.#heading(change, names)}</summary>${this.#sentences(change)}</details>`,
      )}
    `;
  }

  #pair(change: ComparisonResult["changes"][number], names: readonly string[]): TemplateResult {
    return html`<h4>${this.#heading(change, names)}</h4>${this.#sentences(change)}`;
  }

  #heading({ from, to, questions }: ComparisonResult["changes"][number], names: readonly string[]): string {
    const letter = (name: string): string => this.letters[names.indexOf(name)] ?? name;
    const w = words.verdict;
    return questions.length > 1
      ? w.mixed(letter(from), letter(to), questions)
      : w.pair(letter(from), letter(to), questions);
  }

  #sentences({ from, to }: ComparisonResult["changes"][number]): TemplateResult {
    const all = this.result!.differences.filter(
      (d) => d.soil === this.soil && d.tree === this.tree && d.from === from && d.to === to,
    );
    const shown = told.flatMap((id) => all.filter((d) => d.measureId === id));
    const rows = stripRows(this.result!, this.draws, { soil: this.soil, tree: this.tree, from, to });
    const unsure = shown.flatMap((d) => {
      const band = unsureBand(d, rows);
      return band === undefined ? [] : [{ d, band }];
    });
    const clear = shown.filter((d) => d.verdict !== "no clear difference" && unsure.every((one) => one.d !== d));
    const unclear = shown.filter((d) => d.verdict === "no clear difference");
    return html`<ul>
      ${clear.map((d) => html`<li>${clearSentence(d)}</li>`)}
      ${unsure.map(({ d, band }) => html`<li class="unclear">${words.verdict.unsure(d.measureId, d.unit, d.difference, band)}</li>`)}
      ${unclear.map((d) => html`<li class="unclear" title=${words.verdict.floorReason(d)}>${words.verdict.unclear(d.measureId, d.unit, d.difference, d.floor)}</li>`)}
    </ul>`;
  }
}

const clearSentence = (d: Difference): string =>
  words.verdict.clear(
    d.measureId,
    d.unit,
    d.verdict === "rises" ? "rises" : "falls",
    d.difference,
    d.fromValue,
    d.toValue,
    d.floor,
  );

customElements.define("rl-verdict-list", VerdictList);
