import { html, LitElement, nothing, type TemplateResult } from "lit";
import { version } from "rootledger";
import type { Sheet } from "rootledger/advise";
import { type SheetFormat, type SheetText, sheetEnglish, sheetSpanish, sheetText } from "rootledger/words";
import "../../fields/choice-field.js";
import { keepSheet, keptSheets } from "../../state/kept-sheets.js";
import { ownWeatherFile } from "../../state/own-weather.js";
import { scenarioFileOf } from "../../state/scenario-file.js";
import type { CropName, Scene } from "../../state/scene.js";
import { dataWords } from "../../text/data-words.js";
import { amount, dayLabel } from "../../text/number-format.js";
import { sheetPageWords } from "../../text/sheet-page-words.js";
import { toolsWords } from "../../text/tools-words.js";
import { unitsChosen } from "../../text/units-shown.js";
import { words } from "../../text/words.js";
import { SheetMaker } from "../../worker/sheet-maker.js";
import type { SheetMessage } from "../../worker/sheet-protocol.js";
import { pageStyles } from "../page-styles.js";
import { sheetStyles } from "./sheet-styles.js";

const letters = ["A", "B", "C", "D"];

/** Half a page for the grower: what to do, what to read, when to stop; black on white. */
export class SheetPage extends LitElement {
  static override properties = {
    scene: { attribute: false },
    compared: { attribute: false },
    files: { attribute: false },
    startDate: { type: String },
    notice: { state: true },
  };
  declare scene: Scene;
  /** The comparison file of the scene. */
  declare compared: object;
  declare files: Readonly<Record<string, string>>;
  declare startDate: string;
  /** What became of the last sheet that was to be kept. */
  declare notice: string;

  static override styles = [pageStyles, sheetStyles];

  readonly #maker = new SheetMaker();
  #asked = "";

  constructor() {
    super();
    this.notice = "";
    this.#maker.addEventListener("sheet-changed", () => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#maker.end();
    this.#asked = "";
  }

  override willUpdate(): void {
    const { scene, compared, files } = this;
    const name = sheetPageWords().name(this.#soil(scene.shownSoil), this.#programme(scene.shown));
    const file = scenarioFileOf(compared, scene.shownSoil, scene.shown, name);
    const day = Math.floor(scene.hour / 24);
    const key = `${day} ${JSON.stringify(file)}`;
    if (key === this.#asked) return;
    this.#asked = key;
    this.notice = "";
    this.#maker.ask({ file, files, day });
  }

  override render(): TemplateResult {
    const w = sheetPageWords();
    const { answer } = this.#maker;
    return html`<div class="no-print"><h1>${w.heading}</h1><slot name="status"></slot>${this.#choices()}
        <p class="small">${w.from(dayLabel(this.startDate, Math.floor(this.scene.hour / 24)))}</p>
        <div role="status">${answer === undefined ? html`<p>${w.computing}</p>` : nothing}
          ${answer?.kind === "failed" ? html`<p class="failed"><strong>${w.failed}.</strong> <span lang="en">${answer.message}</span></p>` : nothing}
          ${answer?.kind === "no-run" ? html`<p class="failed"><strong>${w.failed}.</strong> ${w.noRun}</p>` : nothing}
          ${answer?.kind === "faults" ? html`<p class="failed"><strong>${w.failed}.</strong> ${answer.faults.map((fault) => words.states.fault(fault))}</p>` : nothing}</div></div>
      ${answer?.kind === "sheet" ? this.#sheet(answer) : nothing}
      ${answer?.kind === "sheet" ? this.#away(answer) : nothing}${this.#earlier()}`;
  }

  /** What may be done with a sheet: printed once its bands are whole, and kept. */
  #away({ sheet, members, all }: Extract<SheetMessage, { kind: "sheet" }>): TemplateResult {
    const w = sheetPageWords();
    const whole = members === all;
    const print = (): void => {
      if (!whole) return;
      this.#keep(sheet);
      window.print();
    };
    return html`<div class="no-print away"><button type="button" aria-disabled=${whole ? "false" : "true"} @click=${print}>${w.print}</button>
      <button type="button" aria-disabled=${whole ? "false" : "true"} @click=${() => whole && this.#keep(sheet)}>${w.keep}</button>
      <span role="status">${whole ? this.notice : w.refining(members, all)}</span></div>`;
  }

  #keep(sheet: Sheet): void {
    const { title, lines } = this.#text(sheet);
    this.notice = keepSheet({ title, lines, link: location.hash }) ? sheetPageWords().kept : sheetPageWords().noRoom;
  }

  #earlier(): TemplateResult | typeof nothing {
    const w = sheetPageWords();
    const kept = keptSheets();
    if (kept.length === 0) return nothing;
    return html`<section class="no-print earlier"><h2>${w.earlier}</h2>${kept.map(
      ({ title, lines, link }) =>
        html`<details><summary>${title}</summary>${lines.map((line) => html`<p>${line}</p>`)}${link.startsWith("#v=") ? html`<p class="small"><a href=${link}>${w.reopen}</a></p>` : nothing}</details>`,
    )}</section>`;
  }

  #choices(): TemplateResult {
    const w = sheetPageWords();
    const { scene } = this;
    const set = (change: Partial<Scene>): void => {
      const detail = (s: Scene): Scene => ({ ...s, ...change });
      this.dispatchEvent(new CustomEvent("scene-edited", { detail, bubbles: true, composed: true }));
    };
    const soils = scene.soils.map((_, i) => ({ value: String(i), text: this.#soil(i) }));
    const programmes = scene.programmes.map((_, i) => ({
      value: String(i),
      text: `${letters[i]}: ${this.#programme(i)}`,
    }));
    return html`<div class="choices">
      <rl-choice-field .label=${`${w.soil}:`} .value=${String(scene.shownSoil)} .choices=${soils} @choice-changed=${(e: CustomEvent<string>) => set({ shownSoil: Number(e.detail) })}></rl-choice-field>
      <rl-choice-field .label=${`${w.programme}:`} .value=${String(scene.shown)} .choices=${programmes} @choice-changed=${(e: CustomEvent<string>) => set({ shown: Number(e.detail) })}></rl-choice-field>
    </div>`;
  }

  #sheet({ sheet, members, all }: Extract<SheetMessage, { kind: "sheet" }>): TemplateResult {
    const text = this.#text(sheet);
    // A band of few draws looks surer than it is.
    const bands =
      members < all
        ? html`<p>${sheetPageWords().refining(members, all)}</p>`
        : html`<ul>${text.expected.map((line) => html`<li>${line}. <span class="read">${text.readHere}: <span class="blank"></span></span></li>`)}</ul>`;
    const [first, ...lines] = text.lines;
    return html`<article>
      <h2>${text.title}</h2>
      <p class="amount">${first}</p>
      ${lines.map((line) => html`<p class="how">${line}</p>`)}
      <div class="parts">
        <section><h3>${text.expectedTitle}</h3>
          ${bands}
          <p>${text.expectedThen}</p></section>
        <section><h3>${text.stopIfTitle}</h3>
          <ul>${text.stopIf.map((line) => html`<li>${line}</li>`)}</ul></section>
      </div>
      ${text.small.map((line) => html`<p class="small">${line}</p>`)}
      <p class="small">rootledger ${version}</p>
      <p class="write">${text.adviser}</p>
    </article>`;
  }

  #text(sheet: Sheet): SheetText {
    const spanish = this.scene.language === "es";
    const { crops } = toolsWords();
    // The example's own names are in English; names that came with a file stay as they are.
    const named = {
      ...sheet,
      treeName: sheet.treeName in crops ? crops[sheet.treeName as CropName] : sheet.treeName,
      weather: { ...sheet.weather, name: ownWeatherFile in this.files ? sheet.weather.name : dataWords().demo },
    };
    return sheetText(named, spanish ? sheetSpanish : sheetEnglish, formatOf(spanish));
  }

  #soil(i: number): string {
    const { texture, structure } = this.scene.soils[i]!;
    return words.soil.name(texture, structure);
  }

  #programme(i: number): string {
    return words.programmes.name(this.scene.programmes[i]!);
  }
}

function formatOf(spanish: boolean): SheetFormat {
  const { water, depth, tension, area } = unitsChosen;
  return {
    language: spanish ? "es" : "en",
    number: amount,
    date: (isoDate) => dayLabel(isoDate, 0),
    units: {
      water: water === "gal" ? "gal" : "L",
      depth: depth === "in" ? "in" : "mm",
      tension: tension === "cbar" ? "cbar" : "kPa",
      area: area === "ac" ? "ac" : "ha",
      length: depth === "in" ? "in" : "cm",
    },
  };
}

customElements.define("rl-sheet-page", SheetPage);
