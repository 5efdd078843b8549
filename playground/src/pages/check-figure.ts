import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { measure, type Result } from "rootledger";
import "../charts/hours-chart.js";
import { amount, clock, dayLabel } from "../text/number-format.js";
import { words } from "../text/words.js";
import { type CheckedChange, type CheckView, checkedChanges, checkedMeasures } from "./check-view.js";
import { pageStyles } from "./page-styles.js";

/** What both engines say of one soil: hours as bars, values, and whether each change lies within its floor. */
export class CheckFigure extends LitElement {
  static override properties = {
    check: { attribute: false },
    soil: { type: String },
    soilIndex: { type: Number },
    name: { type: String },
    letters: { attribute: false },
    startDate: { type: String },
  };
  declare check: CheckView;
  /** Name of the soil in the answer. */
  declare soil: string;
  declare soilIndex: number;
  declare name: string;
  declare letters: readonly string[];
  /** First day of the season, ISO. */
  declare startDate: string;

  static override styles = [
    pageStyles,
    css`
      h3 { font-size: var(--size-body); font-weight: 650; line-height: 1.35; margin-bottom: 0.35rem; text-wrap: balance; }
      .scroll { overflow-x: auto; margin-top: 0.7rem; }
      .scroll:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
      table { border-collapse: collapse; font-size: var(--size-small); min-width: 100%; }
      caption { text-align: left; color: var(--ink-quiet); padding-bottom: 0.2em; }
      th, td { text-align: right; padding: 0.2em 0 0.2em 0.9em; font-weight: 400; border-bottom: 1px solid var(--rule); white-space: nowrap; }
      th:first-child { text-align: left; padding-left: 0; }
      thead th { color: var(--ink-quiet); }
      thead .letter { font-weight: 650; color: var(--ink); border-bottom: 0; text-align: left; padding-left: 0.9em; }
      .beyond { font-weight: 650; }
      .beyond::before { content: "▲ "; }
      .within::before { content: "· "; }
      .pair + .pair { margin-top: 0.2rem; }
      .bars rl-hours-chart + rl-hours-chart { margin-top: -0.2rem; }
    `,
  ];

  override render(): TemplateResult | typeof nothing {
    const { answer, stale, subject } = this.check;
    if (!answer || !subject) return nothing;
    const w = words.check;
    const changes = checkedChanges(answer, this.soil);
    const fast = answer.fast.arms.filter((arm) => arm.soil === this.soil).map((arm) => arm.result);
    if (fast.length === 0) return nothing;
    const first = this.soilIndex * fast.length;
    const physics = fast.map((_, i) => answer.physics[first + i]);
    const beyond = changes.filter((c) => !c.within).length;
    const days = w.days(
      dayLabel(this.startDate, subject.firstDay),
      dayLabel(this.startDate, subject.firstDay + subject.days - 1),
    );
    return html`<figure class=${stale ? "stale" : ""}>
      <h3>${w.title(this.name, beyond, changes.length)}</h3>
      <p class="small">${stale ? w.stale : ""} ${days}</p>
      ${physics.map((result, i) => this.#failed(result, i, subject.firstDay))}
      <div class="columns all">${fast.map((result, i) => this.#bars(result, physics[i], i))}</div>
      ${this.#values(fast, physics)}
      ${
        changes.length === 0
          ? nothing
          : this.#changes(
              changes,
              fast.map((r) => r.programmeName),
            )
      }
    </figure>`;
  }

  #failed(result: Result | undefined, i: number, firstDay: number): TemplateResult | typeof nothing {
    if (result?.status.kind !== "failed") return nothing;
    const hour = result.status.hour + firstDay * 24;
    const when = `${dayLabel(this.startDate, Math.floor(hour / 24))}, ${clock(hour)}`;
    return html`<p><strong>${words.check.noBalance(this.letters[i]!, when)}</strong></p>`;
  }

  #bars(fast: Result, physics: Result | undefined, i: number): TemplateResult {
    const bar = (result: Result) => {
      const hours = (id: string): number => measure(result, id).values[0]!;
      const season = {
        programme: result.programmeName,
        thirstyH: hours("thirsty"),
        fineH: hours("fine"),
        airlessH: hours("airless"),
      };
      return html`<rl-hours-chart .season=${season} ?outlined=${result.engine === "richards"}></rl-hours-chart>`;
    };
    return html`<div class="bars"><span class="small">${words.check.hours(this.letters[i]!)}</span>
      ${bar(fast)}${physics?.status.kind === "finished" ? bar(physics) : nothing}</div>`;
  }

  #values(fast: readonly Result[], physics: readonly (Result | undefined)[]): TemplateResult {
    const w = words.check;
    const cells = (id: string, i: number) => {
      const own = measure(fast[i]!, id).values[0]!;
      const other = physics[i]?.status.kind === "finished" ? measure(physics[i]!, id).values[0]! : undefined;
      return html`<td>${amount(own)}</td><td>${other === undefined ? "…" : amount(other)}</td><td>${other === undefined ? "" : signed(other - own)}</td>`;
    };
    return html`<div class="scroll" tabindex="0" role="group" aria-label=${w.valuesCaption}><table>
      <caption>${w.valuesCaption}</caption>
      <thead>
        <tr><td></td>${fast.map((_, i) => html`<th class="letter" scope="colgroup" colspan="3">${this.letters[i]}</th>`)}</tr>
        <tr><th scope="col">${w.measure}</th>${fast.map(() => html`<th scope="col">${w.fast}</th><th scope="col">${w.physics}</th><th scope="col">${w.difference}</th>`)}</tr>
      </thead>
      <tbody>${checkedMeasures.map((id) => html`<tr><th scope="row">${words.verdict.measure(id, measure(fast[0]!, id).unit)}</th>${fast.map((_, i) => cells(id, i))}</tr>`)}</tbody>
    </table></div>`;
  }

  #changes(changes: readonly CheckedChange[], names: readonly string[]): TemplateResult {
    const w = words.check;
    const letter = (name: string): string => this.letters[names.indexOf(name)] ?? name;
    return html`<div class="scroll" tabindex="0" role="group" aria-label=${w.changesCaption}><table>
      <caption>${w.changesCaption}</caption>
      <thead><tr><th scope="col">${w.change}</th><th scope="col">${w.fast}</th><th scope="col">${w.physics}</th><th scope="col">${w.apart}</th><th scope="col">${w.floor}</th><th scope="col">${w.within}</th></tr></thead>
      <tbody>${changes.map(
        (c) => html`<tr>
          <th scope="row">${w.pair(letter(c.from), letter(c.to))}: ${words.verdict.measure(c.measureId, c.unit)}</th>
          <td>${signed(c.fast)}</td><td>${signed(c.physics)}</td><td>${amount(Math.abs(c.physics - c.fast))}</td><td>${amount(c.floor)}</td>
          <td class=${c.within ? "within" : "beyond"}>${c.within ? w.yes : w.no}</td>
        </tr>`,
      )}</tbody>
    </table></div>`;
  }
}

const signed = (value: number): string => `${value < 0 ? "−" : "+"}${amount(Math.abs(value))}`;

customElements.define("rl-check-figure", CheckFigure);
