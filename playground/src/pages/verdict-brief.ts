import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import type { ComparisonResult } from "rootledger/compare";
import { words } from "../text/words.js";
import { type DrawsView, stripRows, unsureBand } from "./draws-view.js";
import { neighboursOf } from "./neighbours.js";

const measures = ["thirsty", "airless", "transpiration", "below-roots"];

/** Neighbouring programmes held against each other in one line: what clearly changed, and by how much. What the draws do not bear out is not said. */
export class VerdictBrief extends LitElement {
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
    span { margin-right: 0.8em; }
  `;

  override render(): TemplateResult | typeof nothing {
    const { result } = this;
    if (!result) return nothing;
    const { names, neighbours } = neighboursOf(result);
    const letter = (name: string): string => this.letters[names.indexOf(name)] ?? name;
    return html`${neighbours.map(({ from, to, questions }) => {
      const of = result.differences.filter(
        (d) => d.soil === this.soil && d.tree === this.tree && d.from === from && d.to === to,
      );
      const rows = stripRows(result, this.draws, { soil: this.soil, tree: this.tree, from, to });
      const clear = measures.flatMap((id) =>
        of.filter((d) => d.measureId === id && d.verdict !== "no clear difference" && !unsureBand(d, rows)),
      );
      const items = clear.map((d) => ({ id: d.measureId, unit: d.unit, difference: d.difference }));
      return html`<span>${words.verdict.brief(letter(from), letter(to), questions, items)}</span> `;
    })}`;
  }
}

customElements.define("rl-verdict-brief", VerdictBrief);
