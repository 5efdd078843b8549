import { html, nothing, type TemplateResult } from "lit";
import type { Understood } from "rootledger/weather";
import { dataWords } from "../text/data-words.js";
import { whole } from "../text/number-format.js";

/** What was understood of a file: its form, its columns, what was taken for granted, changed, left odd or not read. */
export function understoodView({ report, daily }: Extract<Understood, { ok: true }>): TemplateResult {
  const w = dataWords();
  const list = (title: string, items: readonly string[]) =>
    items.length === 0
      ? nothing
      : html`<p><strong>${title}</strong></p><ul lang="en">${items.slice(0, 12).map((item) => html`<li>${item}</li>`)}</ul>`;
  return html`<section>
    <p><strong>${w.understood(report.records, report.first.slice(0, 10), report.last.slice(0, 10))}</strong></p>
    <p class="small">${w.form(report.layout, report.decimal, report.dates)}</p>
    <div class="scroll" tabindex="0" role="group" aria-label=${w.heading}><table>
      <thead><tr>${w.columns.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
      <tbody lang="en">${report.columns.map((c) => html`<tr><th scope="row">${c.header}</th><td>${c.quantity ?? w.skipped}</td><td>${c.unit}</td><td>${whole(c.values)}</td><td>${whole(c.missing)}</td></tr>`)}</tbody>
    </table></div>
    ${list(
      w.assumed,
      report.assumptions.map(({ taken, because }) => `${taken}: ${because}`),
    )}
    ${list(w.repaired, [...report.repairs.map(({ what, lines }) => `${what}${w.lines(lines)}`), ...(daily?.notes ?? [])])}
    ${list(
      w.odd,
      report.cautions.map(({ column, what }) => `${column === "" ? "" : `${column}: `}${what}`),
    )}
    ${list(
      w.rejected(report.rejectedCount),
      report.rejectedRows.map(({ line, reason }) => w.line(line, reason)),
    )}
  </section>`;
}

/** Why a file was not read, with its places, or what it leaves open with the answers to choose from. */
export function refusedView(
  { question, faults }: Extract<Understood, { ok: false }>,
  name: string,
  say: (key: string, value: string) => void,
): TemplateResult {
  const w = dataWords();
  if (question === undefined) {
    return html`<div class="failed" role="alert"><p><strong>${w.faults}: ${name}</strong></p>
      <ul lang="en">${faults.slice(0, 20).map(({ path, received, rule }) => html`<li>${path === "" ? "" : `${path}: `}${received} ${rule}</li>`)}</ul></div>`;
  }
  return html`<div class="failed" role="alert"><p><strong>${w.asks}</strong> <span lang="en">${question.text}</span></p>
    <ul lang="en">${question.evidence.map((line) => html`<li>${line}</li>`)}</ul>
    <p lang="en">${question.choices.map(({ value, meaning }) => html`<button type="button" @click=${() => say(question.key, value)}>${meaning}</button> `)}</p></div>`;
}
