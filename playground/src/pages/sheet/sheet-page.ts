import { html, LitElement, type TemplateResult } from "lit";
import { version } from "rootledger";
import { m2PerHa } from "rootledger/units";
import "../../fields/choice-field.js";
import type { DemoFile } from "../../state/demo.js";
import type { ProgrammePlan } from "../../state/programme-plan.js";
import { type Scene, spanDays } from "../../state/scene.js";
import { amount, clock, dayLabel, whole } from "../../text/number-format.js";
import { shownIn, tensionText, unitText, waterText } from "../../text/quantity.js";
import { sheetWords } from "../../text/sheet-words.js";
import { words } from "../../text/words.js";
import type { Answer } from "../../worker/protocol.js";
import { type ArmView, armViews } from "../arm-pictures.js";
import { pageStyles } from "../page-styles.js";
import { tensionTraces } from "../section/tension-traces.js";
import { sheetStyles } from "./sheet-styles.js";

const letters = ["A", "B", "C", "D"];
/** A plan is looked at again after this many days; common practice, no source. */
const holdsDays = 14;

/** Half a page for the grower: what to do, what to read, when to stop. */
export class SheetPage extends LitElement {
  static override properties = {
    file: { attribute: false },
    scene: { attribute: false },
    plans: { attribute: false },
    season: { attribute: false },
    stale: { type: Boolean },
  };
  declare file: DemoFile;
  declare scene: Scene;
  declare plans: readonly ProgrammePlan[];
  declare season: Answer | undefined;
  declare stale: boolean;

  static override styles = [pageStyles, sheetStyles];

  override render(): TemplateResult {
    const w = sheetWords();
    const { season } = this;
    return html`<div class="no-print"><h1>${w.heading}</h1><slot name="status"></slot>${this.#choices()}</div>
      ${season ? this.#sheet(season) : html`<p class="small">${w.waiting}</p>`}
      ${season ? html`<p class="no-print"><button type="button" ?disabled=${this.stale} @click=${() => window.print()}>${w.print}</button></p>` : ""}`;
  }

  #choices(): TemplateResult {
    const { scene } = this;
    const set = (change: Partial<Scene>): void => {
      const detail = (s: Scene): Scene => ({ ...s, ...change });
      this.dispatchEvent(new CustomEvent("scene-edited", { detail, bubbles: true, composed: true }));
    };
    return html`<div class="choices">
      <rl-choice-field .label=${words.soil.textureLabel} .value=${String(scene.shownSoil)} .choices=${scene.soils.map((_, i) => ({ value: String(i), text: this.#soil(i) }))} @choice-changed=${(e: CustomEvent<string>) => set({ shownSoil: Number(e.detail) })}></rl-choice-field>
      <rl-choice-field .label=${words.programmes.show} .value=${String(scene.shown)} .choices=${scene.programmes.map((p, i) => ({ value: String(i), text: `${letters[i]}: ${words.programmes.name(p.everyDays, p.pulses)}` }))} @choice-changed=${(e: CustomEvent<string>) => set({ shown: Number(e.detail) })}></rl-choice-field>
    </div>`;
  }

  #sheet(season: Answer): TemplateResult {
    const w = sheetWords();
    const { scene, file } = this;
    const programme = scene.programmes[scene.shown]!;
    const plan = this.plans[scene.shown]!;
    const view = this.#view(season);
    const { picture } = view;
    const open = plan.pulseMinutes * programme.pulses;
    const startH = Number(programme.startTime.slice(0, 2)) + Number(programme.startTime.slice(3)) / 60;
    const endH = startH + (open + programme.gapMinutes * (programme.pulses - 1)) / 60;
    const { startDate, days } = file.season;
    const at = spanDays({ hour: scene.hour, span: "14" }, days);
    const m3PerHa = (plan.litresPerDay / 1000 / (scene.block.treeSpacingM * scene.block.rowSpacingM)) * m2PerHa;
    const figures = [
      [waterText(plan.litresPerDay), w.perTree],
      [this.#duration(open), w.perRun],
      [`${amount(programme.pulses)} × ${programme.startTime}`, w.starts],
    ];
    return html`<article class=${this.stale ? "stale" : ""}>
      <h2>${w.title(this.#soil(scene.shownSoil))}</h2>
      <p class="sentence">${w.sentence(words.programmes.every(programme.everyDays), programme.pulses, this.#duration(plan.pulseMinutes), words.programmes.gap(programme.gapMinutes), programme.startTime)} ${w.latest(clock(endH), Math.floor(endH / 24))}</p>
      ${this.#beyond(view, at.firstDay, at.days) ? html`<p class="careful"><strong>${w.careful}</strong></p>` : ""}
      <dl>${figures.map(([value, name]) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`)}</dl>
      <p>${w.perArea(amount(m3PerHa / shownIn("area", m2PerHa)), unitText("area"))}</p>
      <h3>${w.readings}</h3><ul>${this.#readings(view, at.firstDay, at.days).map((line) => html`<li>${line}</li>`)}</ul>
      <h3>${w.stops}</h3><ul>${w.stopLines(tensionText(picture.airReturnKPa), tensionText(picture.pullLimitKPa)).map((line) => html`<li>${line}</li>`)}</ul>
      <p class="small">${w.counted(whole(view.season.airlessH), whole(view.season.thirstyH), whole(days * 24))}
        ${w.weather(file.weather.name, dayLabel(startDate, 0), dayLabel(startDate, days - 1))} ${w.expires(dayLabel(startDate, Math.floor(scene.hour / 24) + holdsDays))} ${w.version(version)}</p>
      <p class="write">${w.write}</p><p class="write"></p><p class="write two"><span>${w.date}</span><span>${w.adviser}</span></p>
    </article>`;
  }

  /** What instruments should say in the hour before a run, lowest and highest over two weeks. */
  #before(view: ArmView, firstDay: number, days: number): readonly { depthCm: number; low: number; high: number }[] {
    const { scene, file } = this;
    const place = { depthsCm: scene.depthsCm, fromRowCm: scene.sensorAtCm, firstDay, days };
    const traces = tensionTraces(view.picture, file.soils[scene.shownSoil]!, place);
    const { valveOpen, firstHour } = view.picture;
    const starts = Array.from({ length: days * 24 }, (_, h) => h).filter((h) => {
      const row = firstDay * 24 + h - firstHour;
      return row > 0 && valveOpen[row]! > 0 && !(valveOpen[row - 1]! > 0) && h > 0;
    });
    return traces.map(({ depthCm, kPa }) => {
      const all = starts.length > 0 ? starts.map((h) => kPa[h - 1]!) : Array.from(kPa);
      const known = all.filter((value) => !Number.isNaN(value));
      return { depthCm, low: Math.min(...known), high: Math.max(...known) };
    });
  }

  #readings(view: ArmView, firstDay: number, days: number): readonly string[] {
    return this.#before(view, firstDay, days).map(({ depthCm, low, high }) =>
      sheetWords().reading(depthCm, this.scene.sensorAtCm, tensionText(low), tensionText(high)),
    );
  }

  /** The model itself expects readings beyond the limits. */
  #beyond(view: ArmView, firstDay: number, days: number): boolean {
    const { airReturnKPa, pullLimitKPa } = view.picture;
    return this.#before(view, firstDay, days).some(({ low, high }) => low < airReturnKPa || high > pullLimitKPa);
  }

  #duration(minutes: number): string {
    const all = Math.round(minutes);
    return sheetWords().duration(Math.floor(all / 60), all % 60);
  }

  #soil(i: number): string {
    const { texture, structure } = this.scene.soils[i]!;
    return words.soil.name(texture, structure);
  }

  #view(season: Answer): ArmView {
    const { scene, file } = this;
    const facts = { letters, seasonStart: file.season.startDate, canopyDiameterM: file.block.tree.canopyDiameterM };
    return armViews(season, scene.tree, facts)[scene.shownSoil]![scene.shown]!;
  }
}

customElements.define("rl-sheet-page", SheetPage);
