import { html, type TemplateResult } from "lit";
import { classWords } from "../../text/class-words.js";
import type { LessonFault, LessonRule } from "./lesson-faults.js";

const mostShown = 30;

/** Every fault of a file with its place, what stood there, and the rule. */
export function faultTable(faults: readonly LessonFault[]): TemplateResult {
  const w = classWords();
  return html`<div class="failed"><p><strong>${w.faults}</strong></p>
    <table><thead><tr>${w.faultHead.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
    <tbody>${faults.slice(0, mostShown).map(({ path, received, rule }) => html`<tr><th scope="row"><code>${path === "" ? w.wholeFile : path}</code></th><td>${received === "" ? w.nothing : html`<code>${received}</code>`}</td><td>${ruleText(rule)}</td></tr>`)}</tbody></table></div>`;
}

function ruleText(rule: LessonRule): string {
  const { rules } = classWords();
  switch (rule.code) {
    case "kind":
    case "one-of":
    case "form":
      return rules[rule.code](rule.expected);
    case "at-least":
    case "at-most":
      return rules[rule.code](rule.limit, rule.of);
    default:
      return rules[rule.code];
  }
}
