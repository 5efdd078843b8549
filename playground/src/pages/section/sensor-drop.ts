import { html, LitElement, nothing, type TemplateResult } from "lit";
import type { Understood } from "rootledger/weather";
import "../../fields/file-field.js";
import type { SensorFile, SensorSeries } from "../../state/kept-sensors.js";
import { dataWords } from "../../text/data-words.js";
import { sensorWords } from "../../text/sensor-words.js";
import { refusedView, understoodView } from "../block/understood-view.js";
import { weatherDropStyles } from "../block/weather-drop-styles.js";

type Read = Extract<Understood, { ok: true }>;

/** The library counts its minutes from 1 March of year 0; a page counts from 1 January 1970, this many days later. */
const daysTo1970 = 719_468;

/** A file of sensors: dropped, read, shown as it was understood, and only then drawn. */
export class SensorDrop extends LitElement {
  static override properties = {
    current: { attribute: false },
    inside: { type: Number },
    full: { type: Boolean },
    understood: { state: true },
    busy: { state: true },
  };
  /** The file in use, and how many of its readings fall in the season. */
  declare current: SensorFile | undefined;
  declare inside: number;
  declare full: boolean;
  declare understood: Understood | undefined;
  declare busy: boolean;

  static override styles = weatherDropStyles;

  #bytes = new Uint8Array();
  #name = "";
  #answers: Record<string, string> = {};

  constructor() {
    super();
    this.busy = false;
    this.full = false;
    this.inside = 0;
  }

  override render(): TemplateResult {
    const w = sensorWords();
    const { current } = this;
    const all = current?.series.reduce((sum, { values }) => sum + values.length, 0) ?? 0;
    return html`<h2>${w.heading}</h2>
      ${current ? html`<p>${w.inUse(current.name, depthsOf(current), this.inside, all)} ${current.kind === "kPa" ? "" : w.fromContent} <button type="button" @click=${() => this.#use(undefined)}>${w.forget}</button></p>` : nothing}
      <rl-file-field drop .label=${w.drop} accept=".csv,.txt,.dat,.json,.tsv" @file-chosen=${(e: CustomEvent<File>) => void this.#take(e.detail)}></rl-file-field>
      <p class="small">${dataWords().stays}</p>
      <div role="status">${this.busy ? html`<p>${dataWords().reading}</p>` : nothing}${this.full ? html`<p class="failed">${w.full}</p>` : nothing}</div>
      ${this.#answer()}`;
  }

  #answer(): TemplateResult | typeof nothing {
    const { understood } = this;
    if (!understood) return nothing;
    if (understood.ok) return html`${understoodView(understood)}${this.#offer(understood)}`;
    return refusedView(understood, this.#name, (key, value) => {
      this.#answers = { ...this.#answers, [key]: value };
      void this.#read();
    });
  }

  #offer(read: Read): TemplateResult {
    const w = sensorWords();
    const tensions = seriesOf(read, "soilTensionKPa");
    const contents = seriesOf(read, "soilMoistureM3PerM3");
    const series = tensions.length > 0 ? tensions : contents;
    const count = series.reduce((sum, { values }) => sum + values.length, 0);
    if (count === 0) return html`<p class="failed">${w.none}</p>`;
    const file: SensorFile = { name: this.#name, kind: tensions.length > 0 ? "kPa" : "m3/m3", series };
    return html`<div class="offer">${tensions.length > 0 && contents.length > 0 ? html`<p class="small">${w.both}</p>` : nothing}
      <button type="button" class="strong" @click=${() => this.#use(file)}>${w.use(count, depthsOf(file))}</button></div>`;
  }

  async #take(file: File): Promise<void> {
    this.#bytes = new Uint8Array(await file.arrayBuffer());
    this.#name = file.name;
    this.#answers = {};
    await this.#read();
  }

  async #read(): Promise<void> {
    this.busy = true;
    const { understandStationFile } = await import("rootledger/weather");
    await new Promise((resolve) => setTimeout(resolve));
    this.understood = understandStationFile(this.#bytes, this.#answers);
    this.busy = false;
  }

  #use(detail: SensorFile | undefined): void {
    this.understood = undefined;
    this.dispatchEvent(new CustomEvent("sensors-changed", { detail: detail ?? null, bubbles: true, composed: true }));
  }
}

const depthsOf = ({ series }: SensorFile): number[] => [...new Set(series.map(({ depthCm }) => depthCm))];

/** Series of one kind that say how deep they are, values only. */
function seriesOf({ table }: Read, quantity: "soilTensionKPa" | "soilMoistureM3PerM3"): SensorSeries[] {
  return table.columns.flatMap(({ quantity: of, depthCm, values }): SensorSeries[] => {
    if (of !== quantity || depthCm === undefined) return [];
    const at = Array.from(values.keys()).filter((row) => Number.isFinite(values[row]!));
    if (at.length === 0) return [];
    return [
      {
        depthCm,
        minutes: at.map((row) => table.minutes[row]! - daysTo1970 * 1440),
        values: at.map((row) => values[row]!),
      },
    ];
  });
}

customElements.define("rl-sensor-drop", SensorDrop);
