import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { column } from "rootledger";
import { type CalendarDay, seasonCalendar } from "rootledger/programme";
import { rootHours } from "rootledger/water";
import "../../charts/daily-bars.js";
import type { DailyLitres } from "../../charts/daily-bars.js";
import "../../charts/hours-chart.js";
import "../../charts/number-table.js";
import "../../charts/season-calendar.js";
import { nextTurn } from "../../charts/turn.js";
import type { Scene } from "../../state/scene.js";
import { amount, dayLabel, whole } from "../../text/number-format.js";
import { bare } from "../../text/quantity.js";
import { soilMoreWords } from "../../text/soil-more-words.js";
import type { ArmView } from "../arm-pictures.js";
import { pageStyles } from "../page-styles.js";
import { airReturn } from "./air-return.js";
import { saltFigure } from "./salt-figure.js";

const depthsCm = [10, 20, 40];

/** Further down a soil's row: how long air stays away, hours by depth, litres by day, the season's openings, salt. */
export class SoilMore extends LitElement {
  static override properties = {
    scene: { attribute: false },
    season: { attribute: false },
    name: { type: String },
    firstDay: { type: Number },
    days: { type: Number },
  };
  declare scene: Scene;
  declare season: readonly ArmView[];
  declare name: string;
  declare firstDay: number;
  declare days: number;

  static override styles = [
    pageStyles,
    css`
      h3 { font-size: var(--size-body); font-weight: 650; line-height: 1.35; text-wrap: balance; margin-bottom: 0.35rem; }
      figure { margin-bottom: 1.3rem; }
      ul { margin: 0 0 1.3rem; padding-left: 1.1em; }
      .band { font-size: var(--size-small); color: var(--ink-quiet); display: block; margin-top: 0.5rem; }
      .letter { display: none; }
      @media (max-width: 700px) { .letter { display: block; font-weight: 650; font-size: var(--size-small); } }
    `,
  ];

  /** Figures are drawn in tasks of their own. */
  protected override async scheduleUpdate(): Promise<void> {
    await nextTurn();
    super.scheduleUpdate();
  }

  override render(): TemplateResult | typeof nothing {
    if (!this.season || this.season.length === 0) return nothing;
    return html`${this.#air()}${this.#depths()}${this.#daily()}${this.#calendar()}${saltFigure(this.season, this.name)}`;
  }

  #air(): TemplateResult {
    const w = soilMoreWords();
    const lines = this.season.map((v, i) => {
      const { letter } = v.picture;
      const { pulses, gapMinutes } = this.scene.programmes[i]!;
      const gapH = pulses > 1 ? gapMinutes / 60 : 0;
      const { openings, early, medianH, longestH } = airReturn(v.result, v.tree, gapH);
      if (openings === 0) return w.none(letter);
      const back = medianH === undefined ? w.never(letter) : w.back(letter, medianH, longestH);
      if (pulses === 1) return back;
      const gap = `${amount(gapH, 2)} h`;
      const borrowed = early === 0 ? "" : w.borrowed(early, openings);
      if (medianH !== undefined && medianH > gapH) return `${back} ${w.gapShort(gap)} ${borrowed}`;
      return `${back} ${early === 0 ? w.gapEnough(gap) : w.gapUsually(gap)} ${borrowed}`;
    });
    return html`<section class="air"><h3>${w.air(this.name)}</h3><ul>${lines.map((line) => html`<li>${line}</li>`)}</ul></section>`;
  }

  #depths(): TemplateResult {
    const w = soilMoreWords();
    const all = this.season.map((v) => rootHours(v.result, { tree: v.tree, depthsCm }));
    const bands = all[0]!.map(({ depthCm: [from, to] }) => w.band(from, to));
    const table = () => ({
      caption: w.depthTable(this.name),
      head: [
        w.depth,
        ...this.season.flatMap(({ picture: { letter } }) => [`${letter} ${w.thirsty}`, `${letter} ${w.airless}`]),
      ],
      rows: bands.map((band, b) => [band, ...all.flatMap((of) => [whole(of[b]!.thirsty), whole(of[b]!.airless)])]),
    });
    return html`<figure class="depths"><h3>${w.depths(this.name)}</h3>
      ${bands.map((band, b) => {
        const rooted = all.some((of) => of[b]!.thirsty + of[b]!.fine + of[b]!.airless > 0.5);
        if (!rooted) return nothing;
        return html`<span class="band">${band}</span><div class="columns all">${all.map((of, i) => {
          const { thirsty, fine, airless } = of[b]!;
          const season = {
            programme: `${this.season[i]!.picture.programme}, ${band}`,
            thirstyH: thirsty,
            fineH: fine,
            airlessH: airless,
          };
          return html`<div><span class="letter">${this.season[i]!.picture.letter}</span><rl-hours-chart .season=${season}></rl-hours-chart></div>`;
        })}</div>`;
      })}
      <rl-number-table .data=${table}></rl-number-table></figure>`;
  }

  #daily(): TemplateResult {
    const w = soilMoreWords();
    const { firstDay, days } = this;
    const all = this.season.map((v): DailyLitres => {
      const of = (name: string): Float64Array => {
        const { values } = column(v.result.days, name);
        return Float64Array.from(
          { length: days },
          (_, d) => values[(firstDay + d) * v.result.days.trees + v.tree] ?? 0,
        );
      };
      const { programme, startDate } = v.picture;
      return { programme, startDate, firstDay, wantedL: of("wanted"), givenL: of("applied"), lostL: of("belowRoots") };
    });
    const most = Math.max(1, ...all.flatMap((of) => [...of.wantedL, ...of.givenL]));
    const mostLost = Math.max(...all.flatMap((of) => [...of.lostL]));
    const sum = (of: Float64Array): number => of.reduce((total, l) => total + l, 0);
    const table = () => ({
      caption: w.dailyTable(),
      head: [
        w.day,
        ...this.season.flatMap(({ picture: { letter } }) => [
          `${letter} ${w.wanted}`,
          `${letter} ${w.given}`,
          `${letter} ${w.lost}`,
        ]),
      ],
      rows: Array.from({ length: days }, (_, d) => [
        dayLabel(all[0]!.startDate, firstDay + d),
        ...all.flatMap((of) => [of.wantedL, of.givenL, of.lostL].map((l) => bare("water", l[d]!))),
      ]),
    });
    const title = w.daily(
      ...([all.map((of) => sum(of.wantedL)), all.map((of) => sum(of.givenL)), all.map((of) => sum(of.lostL))] as const),
    );
    return html`<figure class="daily"><h3>${title}</h3><p class="small">${w.dailyKey}</p>
      <div class="columns">${all.map((litres, i) => html`<rl-daily-bars ?data-shown=${i === this.scene.shown} .litres=${litres} .mostL=${most} .mostLostL=${mostLost}></rl-daily-bars>`)}</div>
      <rl-number-table .data=${table}></rl-number-table></figure>`;
  }

  #calendar(): TemplateResult {
    const w = soilMoreWords();
    const all = this.season.map(({ result: { valveH, startDate, days } }) =>
      seasonCalendar(valveH, startDate, days.rows),
    );
    const most = Math.max(...all.flat().map(({ minutes }) => minutes));
    const weeks = Math.ceil(all[0]!.length / 7);
    const sum = (of: readonly CalendarDay[], what: "starts" | "minutes"): number =>
      of.reduce((total, day) => total + day[what], 0);
    const table = () => ({
      caption: w.calendarTable,
      head: [
        w.week,
        ...this.season.flatMap(({ picture: { letter } }) => [`${letter} ${w.openings}`, `${letter} ${w.minutes}`]),
      ],
      rows: Array.from({ length: weeks }, (_, week) => [
        dayLabel(all[0]![0]!.date, week * 7),
        ...all.flatMap((of) => {
          const part = of.slice(week * 7, week * 7 + 7);
          return [whole(sum(part, "starts")), whole(sum(part, "minutes"))];
        }),
      ]),
    });
    return html`<figure class="calendar"><h3>${w.calendar(all.map((of) => sum(of, "starts")))}</h3><p class="small">${w.calendarKey}</p>
      <div class="columns">${all.map((of, i) => html`<rl-season-calendar ?data-shown=${i === this.scene.shown} .days=${of} .programme=${this.season[i]!.picture.programme} .mostMinutes=${most} .hour=${this.scene.hour}></rl-season-calendar>`)}</div>
      <rl-number-table .data=${table}></rl-number-table></figure>`;
  }
}

customElements.define("rl-soil-more", SoilMore);
