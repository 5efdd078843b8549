import { cellState, rowOf } from "../charts/arm-picture.js";
import type { TableData } from "../charts/number-table.js";
import { amount, dayLabel, listed, percent, whole } from "../text/number-format.js";
import { bare, unitText } from "../text/quantity.js";
import { words } from "../text/words.js";
import type { ArmView } from "./arm-pictures.js";

const heads = (views: readonly ArmView[]): string[] => views.map((v) => v.picture.programme);

/** Water of every cell at one hour, all programmes in one cell of the table: "31 / 30* / 30". */
export function sectionTable(views: readonly ArmView[], hour: number): TableData {
  const { section } = views[0]!.picture;
  const { layers, lanes, layerEdgesCm, laneEdgesCm } = section;
  const lane = (i: number): string => words.section.lane(laneEdgesCm[i]!, laneEdgesCm[i + 1]!);
  return {
    caption: `${words.section.tableCaption}; ${listed(heads(views))}`,
    head: [words.section.layer, ...Array.from({ length: lanes }, (_, i) => lane(i))],
    rows: Array.from({ length: layers }, (_, layer) => [
      `${amount(layerEdgesCm[layer]!)}–${amount(layerEdgesCm[layer + 1]!)}`,
      ...Array.from({ length: lanes }, (_, l) => views.map((v) => cellText(v, hour, layer * lanes + l)).join(" / ")),
    ]),
  };
}

function cellText({ picture }: ArmView, hour: number, cell: number): string {
  const row = rowOf(picture, hour);
  if (row === undefined) return "";
  const theta = picture.theta[row * picture.section.layers * picture.section.lanes + cell]!;
  const mark = { airless: "*", thirsty: "°", fine: "" }[cellState(picture, cell, theta)];
  return `${whole(theta * 100)}${mark}`;
}

export function belowTable(views: readonly ArmView[], hour: number): TableData {
  const w = words.below;
  const sofar = ({ picture }: ArmView): string =>
    bare("water", picture.belowSinceStartL[rowOf(picture, hour) ?? 0] ?? 0);
  return {
    caption: w.title(
      views.map((v) => v.season.belowL),
      views.map((v) => v.season.belowShare),
    ),
    head: [w.quantity, ...heads(views)],
    rows: [
      [`${w.until}, ${unitText("water")}`, ...views.map(sofar)],
      [`${w.whole}, ${unitText("water")}`, ...views.map((v) => bare("water", v.season.belowL))],
      [w.share, ...views.map((v) => percent(v.season.belowShare))],
    ],
  };
}

/** Water at the end of each day and the runs of that day, programme by programme. */
export function storageTable(views: readonly ArmView[], firstDay: number, days: number): TableData {
  const rows = Array.from({ length: days }, (_, i) => {
    const day = firstDay + i;
    const cells = views.flatMap(({ picture }) => {
      const row = rowOf(picture, day * 24);
      if (row === undefined) return ["", ""];
      const open = picture.valveOpen.subarray(row, row + 24).reduce((sum, share) => sum + share, 0);
      return [bare("depth", picture.storageMm[row + 23]!), amount(open, 2)];
    });
    const first = views[0]!.picture;
    const at = rowOf(first, day * 24) ?? 0;
    const rain = first.rainMm.subarray(at, at + 24).reduce((sum, mm) => sum + mm, 0);
    return [dayLabel(first.startDate, day), ...cells, bare("depth", rain, 2)];
  });
  const head = views.flatMap((v) => [
    `${v.picture.letter}, ${unitText("depth")}`,
    `${v.picture.letter}, ${words.storage.runs} h`,
  ]);
  return {
    caption: words.storage.tableCaption,
    head: [words.storage.day, ...head, `${words.storage.rain}, ${unitText("depth")}`],
    rows,
  };
}

export function hoursTable(views: readonly ArmView[]): TableData {
  const w = words.hours;
  return {
    caption: w.summaryOfAll,
    head: [w.unit, ...heads(views)],
    rows: [
      [w.thirsty, ...views.map((v) => whole(v.season.thirstyH))],
      [w.fine, ...views.map((v) => whole(v.season.fineH))],
      [w.airless, ...views.map((v) => whole(v.season.airlessH))],
    ],
  };
}
