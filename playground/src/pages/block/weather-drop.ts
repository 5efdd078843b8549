import { html, nothing, type TemplateResult } from "lit";
import type { DailyWeather } from "rootledger/weather";
import "../../fields/number-field.js";
import { keepWeather, type OwnWeather } from "../../state/own-weather.js";
import { dataWords } from "../../text/data-words.js";
import { FileDrop, type ReadFile } from "../file-drop.js";
import { fileDropStyles } from "../file-drop-styles.js";

const leastDays = 10;
const neededColumns = ["tMinC", "tMaxC", "rainMm"] as const;

/** A file of weather: dropped, read, shown as it was understood, and only then used. */
export class WeatherDrop extends FileDrop {
  static override properties = {
    current: { type: String },
    own: { type: Boolean },
    place: { state: true },
    noLatitude: { state: true },
  };
  /** Name of the weather in use. */
  declare current: string;
  declare own: boolean;
  /** Latitude is NaN until the file or the reader has said it: a wrong half of the earth turns the seasons round. */
  declare place: { readonly latitudeDeg: number; readonly elevationM: number };
  declare noLatitude: boolean;

  static override styles = fileDropStyles;

  constructor() {
    super();
    this.current = "";
    this.own = false;
    this.place = { latitudeDeg: Number.NaN, elevationM: 100 };
    this.noLatitude = false;
  }

  override render(): TemplateResult {
    const w = dataWords();
    return html`<h2>${w.heading}</h2><p>${w.now(this.own ? this.current : w.demo)} ${this.own ? html`<button type="button" @click=${() => this.#use(undefined)}>${w.back}</button>` : nothing}</p>
      ${this.dropPlace(w.drop, w.full)}`;
  }

  protected override offer(read: ReadFile): TemplateResult {
    const w = dataWords();
    const days = read.daily && usableDays(read.daily.weather);
    if (!days || !read.daily) return html`<p class="failed">${w.noDays}</p>`;
    if (days.gaps.length > 0)
      return html`<div class="failed">${days.gaps.map(({ column, count }) => html`<p>${w.gaps(column, count)}</p>`)}</div>`;
    if (days.count < leastDays) return html`<p class="failed">${w.tooFew(days.count)}</p>`;
    const { weather } = read.daily;
    const number = (key: "latitudeDeg" | "elevationM", label: string, limits: readonly [number, number]) =>
      html`<rl-number-field named .label=${label} .value=${this.place[key]} .limits=${limits} @number-changed=${(e: CustomEvent<number>) => (this.place = { ...this.place, [key]: e.detail })}></rl-number-field>`;
    return html`<div class="offer">${number("latitudeDeg", w.latitude, [-66, 66])}${number("elevationM", w.elevation, [-430, 5000])}
      <button type="button" class="strong" @click=${() => void this.#accept(weather)}>${w.use(days.count, weather.startDate)}</button></div>
      <p role="status" class="failed">${this.noLatitude && Number.isNaN(this.place.latitudeDeg) ? w.noLatitude : nothing}</p>`;
  }

  protected override understoodNow({ report }: ReadFile): void {
    const { latitudeDeg, elevationM } = report.site;
    this.place = {
      latitudeDeg: latitudeDeg ?? this.place.latitudeDeg,
      elevationM: elevationM ?? this.place.elevationM,
    };
  }

  async #accept(weather: DailyWeather): Promise<void> {
    this.noLatitude = Number.isNaN(this.place.latitudeDeg);
    if (this.noLatitude) return;
    const { formatDailyWeather } = await import("rootledger/weather");
    this.#use({
      name: this.fileName,
      text: formatDailyWeather(weather),
      ...this.place,
      et0Method: weather.et0Mm.every((mm) => mm >= 0) ? "given" : "penman-monteith",
      startDate: weather.startDate,
      days: weather.days,
    });
  }

  #use(weather: OwnWeather | undefined): void {
    this.full = keepWeather(weather) === "full";
    if (!this.full) this.dispatchEvent(new CustomEvent("weather-changed", { bubbles: true, composed: true }));
  }
}

/** Days of a record and what is missing in the columns that cannot do without. */
function usableDays(weather: DailyWeather): {
  readonly count: number;
  readonly gaps: readonly { readonly column: string; readonly count: number }[];
} {
  const given = weather.et0Mm.every((mm) => mm >= 0);
  const columns = given ? (["rainMm"] as const) : neededColumns;
  const gaps = columns
    .map((column) => ({ column, count: weather[column].filter((value) => Number.isNaN(value)).length }))
    .filter(({ count }) => count > 0);
  return { count: weather.days, gaps };
}

customElements.define("rl-weather-drop", WeatherDrop);
