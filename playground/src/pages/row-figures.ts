import { html, type TemplateResult } from "lit";
import { rowOf } from "../charts/arm-picture.js";
import "../charts/day-strip.js";
import "../charts/falls-chart.js";
import "../charts/hours-chart.js";
import "../charts/number-table.js";
import "../charts/section-chart.js";
import "../charts/soil-key.js";
import type { SecondTrace } from "../charts/storage-chart.js";
import "../charts/storage-chart.js";
import { clock, longDayLabel } from "../text/number-format.js";
import { words } from "../text/words.js";
import type { ArmView } from "./arm-pictures.js";
import { belowTable, hoursTable, sectionTable, storageTable } from "./table-twins.js";

/** How the pictures of a row are placed in time and drawn to scale with the other rows. */
export interface RowFrame {
  readonly firstDay: number;
  readonly days: number;
  readonly lowMm: number;
  readonly highMm: number;
  readonly mostRainMm: number;
  readonly mostBelowL: number;
  readonly seasonDays: number;
}

/** What the figures of one soil are drawn from. */
export interface RowPictures {
  readonly name: string;
  readonly hour: number;
  /** Programme shown where there is room for one. */
  readonly shown: number;
  readonly pictures: readonly ArmView[];
  readonly season: readonly ArmView[];
  readonly frame: RowFrame;
  readonly manyHours: boolean;
  readonly wall: boolean;
  readonly withKey: boolean;
  /** Root-zone water by the slow engine, by programme, where it was asked. */
  readonly second: readonly (SecondTrace | undefined)[];
  /** Class of what is told about the season, and of the pictures, while they are from before a change. */
  readonly dimmedSeason: string;
  readonly dimmedPictures: string;
}

/** Hours shown side by side instead of motion. */
const fourHours = [3, 9, 15, 21];

export function sectionFigure(row: RowPictures): TemplateResult {
  const { name, hour, shown, pictures, season, withKey, dimmedPictures, dimmedSeason } = row;
  const share = (of: "airlessShare" | "thirstyShare") =>
    pictures.map(({ picture }) => picture[of][rowOf(picture, hour) ?? -1] ?? 0);
  const when = words.time.at(longDayLabel(pictures[0]!.picture.startDate, Math.floor(hour / 24)), hour);
  return html`
    <figure class="section">
      <h3 class=${dimmedPictures}>${words.section.title(name, when, share("airlessShare"), share("thirstyShare"))}</h3>
      <div class="columns ${dimmedPictures}">${pictures.map((v, i) => html`<div ?data-shown=${i === shown}>${ground(row, v)}</div>`)}</div>
      ${withKey ? html`<rl-soil-key></rl-soil-key>` : ""}
      <rl-number-table .data=${() => sectionTable(pictures, hour)}></rl-number-table>
      ${belowCaption(season, hour, dimmedSeason)}
    </figure>
  `;
}

function ground({ hour, pictures, season, frame, manyHours, wall }: RowPictures, v: ArmView): TemplateResult {
  const dayStart = hour - (hour % 24);
  const sofar = v.picture.belowSinceStartL[rowOf(v.picture, hour) ?? 0] ?? 0;
  const whole = pictures === season ? v.season.belowL : undefined;
  const text = whole === undefined ? words.below.inDays(sofar) : words.below.sofar(sofar);
  return html`
    ${
      manyHours
        ? html`<div class="four">${fourHours.map((h) => html`<rl-section-chart .arm=${v.picture} .hour=${dayStart + h} .caption=${clock(h)}></rl-section-chart>`)}</div>`
        : html`<rl-section-chart .arm=${v.picture} .hour=${hour} axes .compact=${wall}></rl-section-chart>`
    }
    <rl-falls-chart .sofarL=${sofar} .totalL=${whole} .mostL=${frame.mostBelowL} .text=${text} .compact=${wall}></rl-falls-chart>
    <rl-day-strip .arm=${v.picture} .hour=${hour}></rl-day-strip>
  `;
}

function belowCaption(season: readonly ArmView[], hour: number, dimmed: string): TemplateResult {
  const litres = season.map((v) => v.season.belowL);
  const shares = season.map((v) => v.season.belowShare);
  return html`
    <h3 class="below ${dimmed}">${words.below.title(litres, shares)}</h3>
    <rl-number-table .data=${() => belowTable(season, hour)}></rl-number-table>
  `;
}

export function storageFigure(row: RowPictures): TemplateResult {
  const { name, hour, shown, pictures, season, frame, dimmedSeason, dimmedPictures } = row;
  const { window } = pictures[0]!.result;
  const lendsMm = window.waterAtAirReturnMm - window.waterAtPullLimitMm;
  const above = season.map((v) => v.season.aboveShare);
  const beneath = season.map((v) => v.season.beneathShare);
  const chart = (v: ArmView, i: number) =>
    html`<rl-storage-chart ?data-shown=${i === shown} .arm=${v.picture} .hour=${hour} .firstDay=${frame.firstDay} .days=${frame.days}
      .lowMm=${frame.lowMm} .highMm=${frame.highMm} .mostRainMm=${frame.mostRainMm} .second=${row.second[i]}></rl-storage-chart>`;
  return html`
    <figure class="storage">
      <h3 class=${dimmedSeason}>${words.storage.title(name, above, beneath)}</h3>
      <p class="window">${words.soil.window(lendsMm, window.litresPerTree, window.airReturnKPa, window.pullLimitKPa)}</p>
      <div class="columns ${dimmedPictures}">${pictures.map(chart)}</div>
      <rl-number-table .data=${() => storageTable(pictures, frame.firstDay, frame.days)}></rl-number-table>
    </figure>
  `;
}

export function hoursFigure({ season, frame, dimmedSeason }: RowPictures): TemplateResult {
  const thirsty = season.map((v) => v.season.thirstyH);
  const airless = season.map((v) => v.season.airlessH);
  const bar = (v: ArmView) =>
    html`<div><span class="letter">${v.picture.programme}</span><rl-hours-chart .season=${v.season}></rl-hours-chart></div>`;
  return html`
    <figure class="hours ${dimmedSeason}">
      <h3>${words.hours.title(frame.seasonDays * 24, thirsty, airless)}</h3>
      <div class="columns all">${season.map(bar)}</div>
      <rl-number-table .data=${() => hoursTable(season)}></rl-number-table>
    </figure>
  `;
}
