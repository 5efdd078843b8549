import { fitSoil } from "./fit-soil.js";
import { grassColumn } from "./grass-column.js";
import { harmonicPrediction } from "./harmonic.js";
import { oneBucketPrediction } from "./one-bucket.js";
import { predictFreely, predictSeen, predictUnseen } from "./predict.js";
import { scoredDays } from "./scored-days.js";
import { type Scores, scoresOf } from "./scores.js";
import { plotOf } from "./soil-unknowns.js";
import { type StationRecord, stationRecord } from "./station-record.js";
import type { Station } from "./stations.js";
import { waterTableNotes } from "./water-table.js";

type Values = Readonly<Record<string, number>>;

/** One row of `npm run validate -- --json`; errors on unseen days, m3/m3, by depth. */
export interface StationReport extends Omit<Scores, "days"> {
  readonly name: string;
  readonly depthsCm: readonly number[];
  readonly unseenDays: number;
  readonly baselines: Readonly<Record<"harmonic" | "bucket", Pick<Scores, "rmse" | "mean0to50Cm">>>;
  /** The last readings of the seen block held for thirty days. */
  readonly persistence: Pick<Scores, "rmse" | "mean0to50Cm">;
  /** One run from the first day to the last without another look at the probes, same parameters. */
  readonly freeRun: Pick<Scores, "rmse" | "mean0to50Cm">;
  readonly seen: Pick<Scores, "rmse" | "mean0to50Cm">;
  readonly beatsBothAtDepth: readonly boolean[];
  readonly parameters: Values;
  readonly notes: readonly string[];
}

/** A report and the days it was made from, for the picture. */
export interface ValidatedStation {
  readonly report: StationReport;
  readonly record: StationRecord;
  readonly predicted: readonly Float64Array[];
}

const verticalOnly = "rain-fed grass: tests vertical flow only, nothing of drip, lanes or trees";

/** Fits a station, or takes values fitted before, and scores the unseen blocks. */
export function validateStation(
  station: Station,
  from: { readonly iterations: number } | { readonly values: Values },
): ValidatedStation {
  const record = stationRecord(station);
  const days = scoredDays(record);
  const { scored } = days;
  const values = "values" in from ? from.values : fitSoil(record, scored, from.iterations).values;
  const column = grassColumn(record, plotOf(record, values));
  const predicted = predictUnseen(record, column);
  const unseen = (what: readonly Float64Array[]): Scores => scoresOf(record, scored, what, "unseen");
  const { days: unseenDays, ...scores } = unseen(predicted);
  const baselines = {
    harmonic: brief(unseen(harmonicPrediction(record, scored))),
    bucket: brief(unseen(oneBucketPrediction(record, scored))),
  };
  const withGains = scoresOf(record, days.beforeGains, predicted, "unseen").mean0to50Cm.rmse;
  const report: StationReport = {
    name: station.name,
    depthsCm: record.depthsCm,
    ...scores,
    unseenDays,
    baselines,
    persistence: brief(unseen(predictUnseen(record, held()))),
    freeRun: brief(unseen(predictFreely(record, column))),
    seen: brief(scoresOf(record, scored, predictSeen(record, column), "seen")),
    beatsBothAtDepth: scores.rmse.map((r, k) => r < baselines.harmonic.rmse[k] && r < baselines.bucket.rmse[k]),
    parameters: values,
    notes: [
      verticalOnly,
      ...days.notes,
      ...(days.gains.length > 0 ? [`with those days kept the 0-50 cm mean is off by ${withGains.toFixed(3)}`] : []),
      ...waterTableNotes(record),
    ],
  };
  return { report, record, predicted };
}

const brief = ({ rmse, mean0to50Cm }: Scores): Pick<Scores, "rmse" | "mean0to50Cm"> => ({ rmse, mean0to50Cm });

function held() {
  let at: readonly number[] = [];
  return {
    start(readings: readonly number[]) {
      at = readings;
    },
    run(out: readonly Float64Array[], from: number, to: number) {
      out.forEach((column, k) => {
        column.fill(at[k], from, to);
      });
    },
  };
}
