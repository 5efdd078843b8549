import { html, LitElement, type TemplateResult } from "lit";
import { column } from "rootledger";
import { rowOf } from "../../charts/arm-picture.js";
import "../../charts/trace-chart.js";
import "../../charts/window-bar.js";
import "../../fields/choice-field.js";
import "../../fields/number-field.js";
import { limits } from "../../fields/limits.js";
import type { DemoFile } from "../../state/demo.js";
import { keepSensors, keptSensors, type SensorFile } from "../../state/kept-sensors.js";
import { type Reading, type Scene, spanDays, spans } from "../../state/scene.js";
import { dataWords } from "../../text/data-words.js";
import { amount, clock, dayLabel, listed, longDayLabel } from "../../text/number-format.js";
import { bare, depthText, unitText, waterText } from "../../text/quantity.js";
import { sectionWords } from "../../text/section-words.js";
import { words } from "../../text/words.js";
import type { Answer } from "../../worker/protocol.js";
import { type ArmView, armViews } from "../arm-pictures.js";
import { waterAxes, wettestDay } from "../findings.js";
import { pageStyles } from "../page-styles.js";
import { seasonStrip } from "../season-strip.js";
import { sectionTable, storageTable } from "../table-twins.js";
import { fileReadings } from "./file-readings.js";
import { missLine } from "./miss-line.js";
import "./readings-list.js";
import "./sensor-drop.js";
import { sectionStyles } from "./section-styles.js";
import { flattened, hoursCsv, standingSvg, takeAway } from "./take-away.js";
import { tensionTraces } from "./tension-traces.js";
import "./translator.js";

const letters = ["A", "B", "C", "D"];

/** One programme on one soil, large: the section by the hour, what instruments should read, what the soil can lend. */
export class SectionPage extends LitElement {
  static override properties = {
    file: { attribute: false },
    scene: { attribute: false },
    season: { attribute: false },
    stale: { type: Boolean },
    wall: { type: Boolean, reflect: true },
    link: { attribute: false },
    compared: { attribute: false },
    manyHours: { state: true },
  };
  declare file: DemoFile;
  declare scene: Scene;
  declare season: Answer | undefined;
  declare stale: boolean;
  declare wall: boolean;
  /** The address that reopens the scene, and the comparison file that it stands for. */
  declare link: () => string;
  declare compared: () => object;
  declare manyHours: boolean;

  static override styles = [pageStyles, sectionStyles];

  #sensors = keptSensors();
  #full = false;
  #made: { season: Answer; tree: string; views: ArmView[][] } | undefined;

  constructor() {
    super();
    this.stale = false;
    this.wall = false;
    this.manyHours = false;
    this.addEventListener("hour-picked", (event) => {
      const hour = (event as CustomEvent<number>).detail;
      this.#change((scene) => ({ ...scene, hour }));
    });
    this.addEventListener("four-hours-toggled", () => {
      this.manyHours = !this.manyHours;
    });
  }

  override render(): TemplateResult {
    const { scene, season } = this;
    const w = sectionWords();
    const name = this.#soilName(scene.shownSoil);
    if (!season) {
      return html`<h1>${name}</h1><slot name="status"></slot>${this.#choices()}<p class="small">${w.waiting}</p>`;
    }
    const views = this.#views(season);
    const view = views[scene.shownSoil]![scene.shown]!;
    const { picture } = view;
    const row = rowOf(picture, scene.hour) ?? 0;
    const when = words.time.at(longDayLabel(picture.startDate, Math.floor(scene.hour / 24)), scene.hour);
    const dimmed = this.stale ? "stale" : "";
    return html`
      <h1>${words.section.title(name, when, [picture.airlessShare[row]!], [picture.thirstyShare[row]!])}</h1>
      <slot name="status"></slot>
      ${this.#choices()}
      <div class="stage ${dimmed}">
        <div class="ground">${this.#ground(view)}</div>
        <div class="side">${this.#window(views, view, row)}
          <rl-water-translator .soil=${this.#fileSoil()} .depthCm=${picture.rootDepthCm} .areaM2=${rootedM2(view)} .pullKPa=${picture.pullLimitKPa}></rl-water-translator></div>
      </div>
      ${this.#storage(views, view, row)}${this.#traces(view)}${this.#takeAway(view)}
      <footer><rl-time-scrubber .strip=${seasonStrip(season, this.file.season.startDate)} .hour=${scene.hour} .firstDay=${this.#span().firstDay} .shownDays=${this.#span().days} .fourHours=${this.manyHours}></rl-time-scrubber></footer>
    `;
  }

  #choices(): TemplateResult {
    const { scene } = this;
    const w = sectionWords();
    const soils = scene.soils.map((_, i) => ({ value: String(i), text: this.#soilName(i) }));
    const programmes = scene.programmes.map((p, i) => ({
      value: String(i),
      text: `${letters[i]}: ${words.programmes.name(p)}`,
    }));
    return html`<div class="choices">
      <rl-choice-field .label=${`${w.soil}:`} .value=${String(scene.shownSoil)} .choices=${soils} @choice-changed=${(e: CustomEvent<string>) => this.#change((s) => ({ ...s, shownSoil: Number(e.detail) }))}></rl-choice-field>
      <rl-choice-field .label=${`${w.programme}:`} .value=${String(scene.shown)} .choices=${programmes} @choice-changed=${(e: CustomEvent<string>) => this.#change((s) => ({ ...s, shown: Number(e.detail) }))}></rl-choice-field>
      <rl-choice-field .label=${`${words.span.label}:`} .value=${scene.span} .choices=${spans.map((value) => ({ value, text: words.span[value] }))}
        @choice-changed=${(e: CustomEvent<Scene["span"]>) => this.#change((s) => ({ ...s, span: e.detail }))}></rl-choice-field>
    </div>`;
  }

  #ground(view: ArmView): TemplateResult {
    const { hour } = this.scene;
    const sofar = view.picture.belowSinceStartL[rowOf(view.picture, hour) ?? 0] ?? 0;
    const dayStart = hour - (hour % 24);
    const picture = this.manyHours
      ? html`<div class="four">${[3, 9, 15, 21].map((h) => html`<rl-section-chart .arm=${view.picture} .hour=${dayStart + h} .caption=${clock(h)}></rl-section-chart>`)}</div>`
      : html`<rl-section-chart .arm=${view.picture} .hour=${hour} axes></rl-section-chart>`;
    return html`<figure>${picture}
      <rl-falls-chart .sofarL=${sofar} .totalL=${view.season.belowL} .mostL=${Math.max(1, view.season.belowL)} .text=${words.below.sofar(sofar)}></rl-falls-chart>
      <rl-day-strip .arm=${view.picture} .hour=${hour}></rl-day-strip>
      <rl-soil-key></rl-soil-key>
      <rl-number-table .data=${() => sectionTable([view], hour)}></rl-number-table></figure>`;
  }

  #window(views: ArmView[][], view: ArmView, row: number): TemplateResult {
    const w = sectionWords();
    const { scene } = this;
    const tubes = views.map((arms, i) => {
      const { window } = arms[scene.shown]!.result;
      const { picture } = arms[scene.shown]!;
      const lendsMm = window.waterAtAirReturnMm - window.waterAtPullLimitMm;
      const level = (picture.storageMm[row]! - window.waterAtPullLimitMm) / lendsMm;
      return {
        name: this.#soilName(i),
        lendsL: window.litresPerTree,
        lendsText: `${depthText(lendsMm)}, ${waterText(window.litresPerTree)}`,
        level,
      };
    });
    const { days } = view.result;
    const wanted = column(days, "wanted").values[Math.floor(scene.hour / 24) * days.trees + view.tree] ?? 0;
    return html`<figure><h2>${w.window(this.#soilName(scene.shownSoil))}</h2>
      <rl-window-bar .tubes=${tubes} .demandL=${wanted}></rl-window-bar>
      <p class="small">${w.windowNote}</p></figure>`;
  }

  #storage(views: ArmView[][], view: ArmView, row: number): TemplateResult {
    const { picture } = view;
    const axis = waterAxes(views.map((arms) => arms.map((v) => v.picture)))[this.scene.shownSoil]!;
    const { firstDay, days } = this.#span();
    return html`<figure class="storage"><h2>${sectionWords().storage(depthText(picture.storageMm[row]!), depthText(picture.airLineMm), depthText(picture.pullLineMm))}</h2>
      <rl-storage-chart tall .arm=${picture} .hour=${this.scene.hour} .firstDay=${firstDay} .days=${days} .lowMm=${axis.lowMm} .highMm=${axis.highMm} .mostRainMm=${wettestDay(picture.rainMm)}></rl-storage-chart>
      <rl-number-table .data=${() => storageTable([view], firstDay, days)}></rl-number-table></figure>`;
  }

  #traces(view: ArmView): TemplateResult {
    const { scene, file } = this;
    const w = sectionWords();
    const soil = this.#fileSoil();
    const { firstDay, days } = this.#span();
    const place = { fromRowCm: scene.sensorAtCm, firstDay, days };
    const traces = tensionTraces(view.picture, soil, { ...place, depthsCm: scene.depthsCm });
    const { startDate } = file.season;
    const logged = this.#sensors === undefined ? [] : fileReadings(this.#sensors, soil, file.season);
    const table = () => ({
      caption: w.table,
      head: [words.storage.day, ...traces.map((t) => `${t.depthCm} cm, ${unitText("tension")}`)],
      rows: Array.from({ length: days }, (_, d) => [
        dayLabel(startDate, firstDay + d),
        ...traces.map((t) => bare("tension", t.kPa[d * 24 + 12]!, 2)),
      ]),
    });
    return html`<figure class="traces"><h2>${w.traces(listed(scene.depthsCm.map((cm) => amount(cm))), scene.sensorAtCm)}</h2>
      <div class="choices">
        <label>${w.depthsLabel} <input type="text" inputmode="numeric" .value=${scene.depthsCm.join(" ")} @change=${(e: Event) => this.#depths(e.target as HTMLInputElement)}></label>
        <rl-number-field named .label=${w.distanceLabel} .value=${scene.sensorAtCm} .limits=${limits.sensorAtCm} .decimals=${0} .step=${10}
          @number-changed=${(e: CustomEvent<number>) => this.#change((s) => ({ ...s, sensorAtCm: Math.round(e.detail) }))}></rl-number-field>
      </div>
      <rl-trace-chart .traces=${traces} .readings=${scene.readings} .fileReadings=${logged} .hour=${scene.hour} .firstDay=${firstDay} .days=${days} .airKPa=${view.picture.airReturnKPa} .pullKPa=${view.picture.pullLimitKPa} .startDate=${startDate}></rl-trace-chart>
      <rl-number-table .data=${table}></rl-number-table>
      <rl-readings-list .readings=${scene.readings} .picture=${view.picture} .soil=${soil} .fromRowCm=${scene.sensorAtCm} .hour=${scene.hour} .startDate=${startDate} .seasonDays=${file.season.days}
        @readings-changed=${(e: CustomEvent<readonly Reading[]>) => this.#change((s) => ({ ...s, readings: e.detail }))}></rl-readings-list>
      ${missLine(logged, traces, firstDay)}
      <rl-sensor-drop .current=${this.#sensors} .inside=${logged.length} ?full=${this.#full} @sensors-changed=${this.#sensorsChanged}></rl-sensor-drop></figure>`;
  }

  /** An event carries null for nothing. */
  readonly #sensorsChanged = ({ detail }: CustomEvent<SensorFile | null>): void => {
    this.#sensors = detail ?? undefined;
    this.#full = !keepSensors(this.#sensors);
    this.requestUpdate();
  };

  #takeAway(view: ArmView): TemplateResult {
    const w = dataWords();
    const root = this.renderRoot;
    const name = `rootledger-${view.picture.soil.split(": ").at(-1)}-${view.picture.letter}`
      .toLowerCase()
      .replace(/[^a-z0-9-]+/g, "-");
    const inChart = <T extends Element>(chart: string, what: string): T | null | undefined =>
      root.querySelector(chart)?.shadowRoot?.querySelector<T>(what);
    const png = async (): Promise<void> => {
      const canvas = inChart<HTMLCanvasElement>("rl-section-chart", "canvas");
      const drawing = inChart<SVGSVGElement>("rl-section-chart", "svg");
      if (canvas && drawing) takeAway(`${name}.png`, await flattened(canvas, drawing));
    };
    const svgFile = (): void => {
      const drawing = inChart<SVGSVGElement>("rl-storage-chart", "svg");
      if (drawing) takeAway(`${name}.svg`, new Blob([standingSvg(drawing)], { type: "image/svg+xml" }));
    };
    const json = (): void => {
      const all = {
        version: view.result.version,
        link: this.link(),
        file: this.compared(),
        measures: view.result.measures.map(({ id, unit, values }) => ({ id, unit, value: values[view.tree] })),
        notes: view.result.notes,
      };
      takeAway(`${name}.json`, new Blob([JSON.stringify(all, null, 2)], { type: "application/json" }));
    };
    const csv = (): void => takeAway(`${name}.csv`, hoursCsv(view.result, view.tree));
    return html`<p class="away"><span>${w.takeAway}:</span> <button type="button" @click=${png}>${w.picture}</button> <button type="button" @click=${svgFile}>${w.chart}</button> <button type="button" @click=${csv}>${w.table}</button> <button type="button" @click=${json}>${w.scene}</button></p>`;
  }

  #depths(input: HTMLInputElement): void {
    const depths = input.value
      .trim()
      .split(/[\s;,.]+/)
      .map(Number);
    const fine =
      depths.length <= 3 && depths.every((cm) => Number.isInteger(cm) && cm > 0 && cm < limits.sensorDepthCm);
    input.setCustomValidity(fine ? "" : sectionWords().depthsRule);
    if (!input.reportValidity()) return;
    this.#change((s) => ({ ...s, depthsCm: [...new Set(depths)].sort((a, b) => a - b) }));
  }

  #span(): { firstDay: number; days: number } {
    return spanDays(this.scene, this.file.season.days);
  }

  #soilName(i: number): string {
    const { texture, structure } = this.scene.soils[i]!;
    return words.soil.name(texture, structure);
  }

  /** The soil as the file of the scene has it. */
  #fileSoil(): DemoFile["soils"][number] {
    return this.file.soils[this.scene.shownSoil]!;
  }

  #views(season: Answer): ArmView[][] {
    const { tree } = this.scene;
    if (this.#made?.season !== season || this.#made.tree !== tree) {
      const { season: of, block } = this.file;
      const facts = { letters, seasonStart: of.startDate, canopyDiameterM: block.tree.canopyDiameterM };
      this.#made = { season, tree, views: armViews(season, tree, facts) };
    }
    return this.#made.views;
  }

  #change(edit: (scene: Scene) => Scene): void {
    this.dispatchEvent(new CustomEvent("scene-edited", { detail: edit, bubbles: true, composed: true }));
  }
}

/** Ground over rooted soil, m2 per tree: the top layer's cells that have roots below or in them. */
function rootedM2({ result: { section } }: ArmView): number {
  let cm2 = 0;
  const thickness = section.layerEdgesCm[1]! - section.layerEdgesCm[0]!;
  for (let lane = 0; lane < section.lanes; lane++) {
    if (section.rootShare[lane]! > 0) cm2 += section.volumeCm3[lane]! / thickness;
  }
  return cm2 / 1e4;
}

customElements.define("rl-section-page", SectionPage);
