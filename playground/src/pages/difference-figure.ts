import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import type { ComparisonResult } from "rootledger/compare";
import "../charts/difference-strip.js";
import type { TableData } from "../charts/number-table.js";
import type { StripRow } from "../charts/strip-row.js";
import { nextTurn } from "../charts/turn.js";
import { amount, percent, signedAmount } from "../text/number-format.js";
import { words } from "../text/words.js";
import { type DrawsView, stripRows } from "./draws-view.js";
import { neighboursOf } from "./neighbours.js";
import { pageStyles } from "./page-styles.js";

/** What each change of programme does on one soil: a strip with its zero line, its floor and, once drawn, its band. */
export class DifferenceFigure extends LitElement {
  static override properties = {
    result: { attribute: false },
    draws: { attribute: false },
    soil: { type: String },
    name: { type: String },
    tree: { type: String },
    letters: { attribute: false },
  };
  declare result: ComparisonResult;
  declare draws: DrawsView;
  /** Name of the soil in the answer. */
  declare soil: string;
  /** The soil as the page calls it. */
  declare name: string;
  declare tree: string;
  declare letters: readonly string[];

  static override styles = [
    pageStyles,
    css`
      :host { margin-bottom: 1.3rem; }
      h3 { font-size: var(--size-body); font-weight: 650; line-height: 1.35; margin-bottom: 0.35rem; text-wrap: balance; }
      h4 { font-size: var(--size-small); font-weight: 650; margin: 0.6rem 0 0.1rem; }
      .pairs { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 20rem), 1fr)); gap: 0.6rem 2.2rem; }
    `,
  ];

  /** Figures are drawn in tasks of their own. */
  protected override async scheduleUpdate(): Promise<void> {
    await nextTurn();
    super.scheduleUpdate();
  }

  override render(): TemplateResult | typeof nothing {
    const { result, draws } = this;
    if (!result) return nothing;
    const { names, neighbours } = neighboursOf(result);
    const letter = (name: string): string => this.letters[names.indexOf(name)] ?? name;
    const pairs = neighbours.map(({ from, to }) => ({
      heading: words.draws.pair(letter(from), letter(to)),
      rows: stripRows(result, draws, { soil: this.soil, tree: this.tree, from, to }),
    }));
    const rows = pairs.flatMap((pair) => pair.rows);
    const clear = rows.filter(({ verdict }) => verdict !== "no clear difference").length;
    const drawn = rows.some(({ band }) => band !== undefined) ? draws.answer?.result : undefined;
    return html`<figure>
      <h3>${words.draws.title(this.name, clear, rows.length, drawn?.finished)}</h3>
      <p class="small">${words.draws.key}</p>
      <div class="pairs">${pairs.map(
        ({ heading, rows: of }) => html`<div><h4>${heading}</h4>
          <rl-difference-strip .rows=${of} .heading=${`${this.name}, ${heading}`}></rl-difference-strip>
          <rl-number-table .data=${() => tableOf(heading, of)}></rl-number-table></div>`,
      )}</div>
    </figure>`;
  }
}

function tableOf(heading: string, rows: readonly StripRow[]): TableData {
  const w = words.draws;
  const share = (of: number | undefined): string => (of === undefined ? "" : percent(of));
  return {
    caption: heading,
    head: [w.measure, w.low, w.middle, w.high, w.floor, w.more, w.less, w.verdict],
    rows: rows.map(({ measureId, unit, value, band, floor, verdict }) => [
      words.verdict.measure(measureId, unit),
      ...[band ? signedAmount(band.low) : "", signedAmount(value), band ? signedAmount(band.high) : "", amount(floor)],
      ...[share(band?.risesShare), share(band?.fallsShare), w.verdicts[verdict]],
    ]),
  };
}

customElements.define("rl-difference-figure", DifferenceFigure);
