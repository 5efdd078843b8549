import type { Calibration, FitScores, PlaceScores } from "rootledger/calibrate";
import { calibrateWords as words } from "../words-calibrate.js";
import { textTable, wrapped } from "./text-table.js";

/** Values with their intervals, scores of seen and unseen blocks, and what the intervals rest on. */
export function calibrationText(name: string, fit: Calibration, missing: number): string {
  const count = fit.train.all.count + (fit.test?.all.count ?? 0);
  const share = `${(100 * fit.share).toFixed(0)} %`;
  const values = fit.unknowns.map(({ id, unit, value, low, high, priorLow, priorHigh, atBound }) => [
    atBound ? `${id} *` : id,
    unit,
    ...[value, low, high, priorLow, priorHigh].map((number) => number.toPrecision(3)),
  ]);
  const bound = fit.unknowns.some(({ atBound }) => atBound) ? wrapped(`* ${words.atBound}`) : "";
  const { noise, autocorrelation, effectiveReadings, enough } = fit;
  return [
    wrapped(words.fitted(name, count, fit.runs)),
    ...(missing > 0 ? [wrapped(words.missing(missing))] : []),
    "\n",
    textTable("", [], [[words.interval(share), ...words.columns], ...values]),
    bound,
    "\n",
    textTable("", [], [[words.scores, ...words.scoreColumns], ...scoreRows(fit)]),
    "\n",
    wrapped(words.honest(noise.toPrecision(2), autocorrelation.toFixed(2), effectiveReadings.toFixed(0))),
    enough ? "" : wrapped(words.tooFew),
  ].join("");
}

function scoreRows({ train, test, before }: Calibration): string[][] {
  const group = (label: string, scores: PlaceScores | undefined): string[][] =>
    scores === undefined
      ? []
      : [
          [label, ...cells(scores.all)],
          ...(scores.byPlace.length > 1
            ? scores.byPlace.map((place) => [
                `  ${place.depthCm} ${words.depth} ${place.fromLineCm} ${words.fromLine}`,
                ...cells(place),
              ])
            : []),
        ];
  const earlier = before.test ?? before.train;
  return [
    ...group(words.train, train),
    ...group(words.test, test),
    [`${words.before}, ${before.test === undefined ? words.train : words.test}`, ...cells(earlier.all)],
  ];
}

const cells = ({ count, rmse, bias, nse, kge }: FitScores): string[] => [
  String(count),
  ...[rmse, bias].map((value) => value.toFixed(4)),
  ...[nse, kge].map((value) => (Number.isNaN(value) ? "-" : value.toFixed(2))),
];
