import { html, type TemplateResult } from "lit";
import { measure } from "rootledger";
import { airDamageBand, airDamageOf } from "rootledger/water";
import "../../charts/damage-chart.js";
import { classWords } from "../../text/class-words.js";
import { lessonText } from "./lesson.js";
import { type ShownLesson, viewAt } from "./lesson-view.js";

/** Temperature of the soil where a lesson names none, C: warm enough for root rot at its worst. */
const warmC = 24;

/** How long the roots went without air against the band of the sources, who say what they saw. */
export function damagePicture(shown: ShownLesson): TemplateResult {
  const w = classWords();
  const { lesson, on } = shown;
  const rootRot = on && lesson.switch?.rootRot === true ? "present" : "absent";
  const band = airDamageBand({ rootRot, temperatureC: lesson.soilTemperatureC ?? warmC });
  const spells = lesson.columns.flatMap(({ name }, i) => {
    const view = viewAt(shown, i);
    if (!view) return [];
    return [{ name: lessonText(name), hours: measure(view.result, "longest-airless").values[view.tree]! }];
  });
  return html`<rl-damage-chart .data=${{ fromH: band.fromH, toH: band.toH, spells }}></rl-damage-chart>
    ${spells.map(({ name, hours }) => html`<p class="verdict"><strong>${name}:</strong> ${w.damageVerdict[airDamageOf(hours, band)]}</p>`)}
    <p>${w.damageRemark}</p>
    <ul class="small sources">${band.spells.map(({ hours: [from, to], saw, source }) => html`<li>${from === to ? w.span(from) : w.spanRange(from, to)}: ${w.saw(source, saw)} (<span lang="en">${source}</span>)</li>`)}</ul>`;
}
