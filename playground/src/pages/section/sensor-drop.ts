import { html, nothing, type TemplateResult } from "lit";
import type { SensorFile, SensorSeries } from "../../state/kept-sensors.js";
import { sensorWords } from "../../text/sensor-words.js";
import { FileDrop, type ReadFile } from "../file-drop.js";
import { fileDropStyles } from "../file-drop-styles.js";

/** The library counts its minutes from 1 March of year 0; a page counts from 1 January 1970, this many days later. */
const daysTo1970 = 719_468;

/** A file of sensors: dropped, read, shown as it was understood, and only then drawn. */
export class SensorDrop extends FileDrop {
  static override properties = {
    current: { attribute: false },
    inside: { type: Number },
  };
  /** The file in use, and how many of its readings fall in the season. */
  declare current: SensorFile | undefined;
  declare inside: number;

  static override styles = fileDropStyles;

  constructor() {
    super();
    this.inside = 0;
  }

  override render(): TemplateResult {
    const w = sensorWords();
    const { current } = this;
    const all = current?.series.reduce((sum, { values }) => sum + values.length, 0) ?? 0;
    return html`<h2>${w.heading}</h2>
      ${current ? html`<p>${w.inUse(current.name, depthsOf(current), this.inside, all)} ${current.kind === "kPa" ? "" : w.fromContent} <button type="button" @click=${() => this.#use(undefined)}>${w.forget}</button></p>` : nothing}
      ${this.dropPlace(w.drop, w.full)}`;
  }

  protected override offer(read: ReadFile): TemplateResult {
    const w = sensorWords();
    const tensions = seriesOf(read, "soilTensionKPa");
    const contents = seriesOf(read, "soilMoistureM3PerM3");
    const series = tensions.length > 0 ? tensions : contents;
    const count = series.reduce((sum, { values }) => sum + values.length, 0);
    if (count === 0) return html`<p class="failed">${w.none}</p>`;
    const file: SensorFile = { name: this.fileName, kind: tensions.length > 0 ? "kPa" : "m3/m3", series };
    return html`<div class="offer">${tensions.length > 0 && contents.length > 0 ? html`<p class="small">${w.both}</p>` : nothing}
      <button type="button" class="strong" @click=${() => this.#use(file)}>${w.use(count, depthsOf(file))}</button></div>`;
  }

  #use(detail: SensorFile | undefined): void {
    this.understood = undefined;
    this.dispatchEvent(new CustomEvent("sensors-changed", { detail: detail ?? null, bubbles: true, composed: true }));
  }
}

const depthsOf = ({ series }: SensorFile): number[] => [...new Set(series.map(({ depthCm }) => depthCm))];

/** Series of one kind that say how deep they are, values only. */
function seriesOf({ table }: ReadFile, quantity: "soilTensionKPa" | "soilMoistureM3PerM3"): SensorSeries[] {
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
