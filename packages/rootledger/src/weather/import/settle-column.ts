import type { StationAnswers } from "./answers.js";
import { repair } from "./body-rows.js";
import type { ColumnPlan } from "./column-plan.js";
import { decumulate, looksCumulative, saysCumulative } from "./cumulative-rain.js";
import { type CodesFound, dropMissingCodes } from "./missing-codes.js";
import { type QuantityName, quantities } from "./quantity.js";
import type { RawColumn } from "./read-values.js";
import { type FileFacts, settleUnit } from "./settle-unit.js";
import { mark } from "./special-cell.js";
import type { Assumption, Caution, ColumnReport, Repair } from "./station-report.js";
import { ask, isStop, type Stop } from "./stop.js";
import { fixTensionSign } from "./tension-sign.js";
import type { Unit } from "./unit.js";
import { unitOf } from "./unit.js";
import { clipHumidity, nightToZero } from "./value-limits.js";

/** A column in its kept unit, rows in the order of time. */
export interface SettledColumn {
  readonly plan: ColumnPlan;
  readonly quantity: QuantityName;
  readonly unit: Unit;
  readonly unitFrom: ColumnReport["unitFrom"];
  readonly values: Float64Array;
  readonly marks: Uint8Array;
  readonly repairs: readonly Repair[];
  readonly assumptions: readonly Assumption[];
  readonly cautions: readonly Caution[];
}

export interface SettleContext {
  readonly answers: StationAnswers;
  readonly facts: FileFacts;
  /** Line of each row. */
  readonly lines: readonly number[];
}

/**
 * Brings a column to its kept unit and takes out what is no value, in this order: missing codes, a counting gauge, the unit, the sign of tension,
 * moisture in two units, humidity above 100 %, radiation below 0 at night, impossible values. Undefined where its unit cannot be told and it is left out.
 */
export function settleColumn(
  quantity: QuantityName,
  raw: RawColumn,
  context: SettleContext,
): SettledColumn | Stop | undefined {
  const { answers, facts, lines } = context;
  const { values, marks, plan } = raw;
  const header = plan.header;
  const canonical = plan.role.kind === "quantity" && plan.role.canonical;
  const repairs: Repair[] = [];
  const cautions: Caution[] = [];
  const add = (code: Repair["code"], rows: readonly number[], what: string): void => {
    if (rows.length > 0)
      repairs.push(
        repair(
          code,
          header,
          rows.map((i) => lines[i]),
          what,
        ),
      );
  };
  const limits = quantities[quantity];
  const possible = possibleIn(plan.unit ?? raw.cellUnit, quantity, facts);
  const codes = canonical ? noCodes : dropMissingCodes(values, marks, possible);
  if (codes.unclear !== undefined) return codeQuestion(header, codes.unclear.value, codes.unclear.rows, lines);
  add("missing-code", codes.rows, `${codes.values.join(", ")} taken as missing`);
  if (quantity === "rainMm" && !canonical) {
    const told = answers.rain ?? (saysCumulative(header) ? "cumulative" : undefined);
    if (told === undefined && looksCumulative(values)) return gaugeQuestion(header);
    if (told === "cumulative") {
      const { resets, noise } = decumulate(values, Array.from(values.keys()));
      marks.forEach((one, i) => {
        if (one === mark.value && Number.isNaN(values[i])) marks[i] = mark.missing;
      });
      repairs.push({
        code: "cumulative-rain",
        column: header,
        count: values.length,
        what: `a counter: rain is its rises; ${resets.length} resets, ${noise.length} small falls counted as 0`,
        lines: resets.slice(0, 8).map((i) => lines[i]),
      });
    }
  }
  const settled = settleUnit(quantity, raw, facts);
  if (settled === undefined || isStop(settled)) return settled;
  const { unit } = settled;
  const seconds = unit.perSecond ? facts.stepMinutes * 60 : 1;
  const twoUnits =
    quantity === "soilMoistureM3PerM3" && settled.unitFrom === "assumed" ? twoMoistureUnits(raw, context) : undefined;
  if (twoUnits !== undefined && isStop(twoUnits)) return twoUnits;
  const convert = twoUnits ?? ((value: number): number => unit.toKept(value) * seconds);
  for (let i = 0; i < values.length; i++) values[i] = convert(values[i]) + 0;
  if (twoUnits !== undefined)
    repairs.push({
      code: "fraction-and-percent",
      column: header,
      count: 1,
      what: "values above 1 read as percent, the others as fractions",
      lines: [],
    });
  if (quantity === "soilTensionKPa") {
    const sign = fixTensionSign(values, marks);
    add("sign-turned", sign.turned, "of the other sign than the rest: turned and marked as suspect");
    if (sign.negative)
      cautions.push({
        code: "not-converted",
        column: header,
        what: "suction is written with a minus sign; kept as positive tension",
      });
  }
  if (limits.dimension === "humidity") add("humidity-above-100", clipHumidity(values), "above 100 %, taken as 100");
  if (quantity === "solarMJPerM2" && facts.stepMinutes < 1440)
    add("night-radiation", nightToZero(values, facts.stepMinutes), "below 0 at night, taken as 0");
  const beyond: number[] = [];
  for (let i = 0; i < values.length; i++) if (values[i] < limits.lowest || values[i] > limits.highest) beyond.push(i);
  const broken = beyond.filter(
    (i) => !(quantity === "soilMoistureM3PerM3" && values[i] >= 0 && values[i] < limits.lowest),
  );
  // Nothing is computed from a direction; some stations write 99 or 990 for "from all sides".
  const asks = quantity !== "windDirectionDeg";
  if (asks && broken.length > 0 && answers["out-of-range"] !== "missing")
    return rangeQuestion(quantity, header, broken, values, lines);
  for (const i of beyond) {
    values[i] = Number.NaN;
    marks[i] = mark.missing;
  }
  add("out-of-range", beyond, `outside ${limits.lowest} to ${limits.highest}, taken as missing`);
  add("other-decimal-sign", raw.strayDecimal, "written with the other decimal sign: read and marked as suspect");
  add("flagged-value", raw.flagged, "with a letter or sign behind the number: marked as suspect");
  return {
    plan,
    quantity,
    unit,
    unitFrom: settled.unitFrom,
    values,
    marks,
    repairs,
    assumptions: settled.assumptions,
    cautions,
  };
}

/** A file in the library's own names writes an empty cell for "no value". */
const noCodes: CodesFound = { rows: [], values: [], unclear: undefined };

/** Whether a number of the file could be a value, in its unit or, where that is not said, in the kept one. */
function possibleIn(
  unit: Unit | undefined,
  quantity: QuantityName,
  { stepMinutes }: FileFacts,
): (value: number) => boolean {
  const { lowest, highest } = quantities[quantity];
  if (unit === undefined) return (value) => value >= lowest && value <= highest;
  const seconds = unit.perSecond ? stepMinutes * 60 : 1;
  return (value) => {
    const kept = unit.toKept(value) * seconds;
    return kept >= lowest && kept <= highest;
  };
}

const codeQuestion = (header: string, value: number, rows: readonly number[], lines: readonly number[]): Stop =>
  ask(
    "missing",
    `In "${header}" the value ${value} stands ${rows.length} times, far from all others. Does it mean "no value"?`,
    [{ value: String(value), meaning: "no value; list here all words and numbers that mean this, parted by commas" }],
    rows.slice(0, 5).map((i) => `line ${lines[i]}: ${value}`),
  );

const gaugeQuestion = (header: string): Stop =>
  ask("rain", `"${header}" hardly ever falls and mostly repeats itself. Does the gauge count up?`, [
    { value: "cumulative", meaning: "a counter: rain is the rise from record to record" },
    { value: "each-record", meaning: "the rain of each record" },
  ]);

function rangeQuestion(
  quantity: QuantityName,
  header: string,
  rows: readonly number[],
  values: Float64Array,
  lines: readonly number[],
): Stop {
  const { lowest, highest } = quantities[quantity];
  return ask(
    "out-of-range",
    `"${header}" has ${rows.length} values outside ${lowest} to ${highest} (${quantity}). Are they errors?`,
    [
      {
        value: "missing",
        meaning: "they become missing values and are counted; else correct them, the unit or the list of missing codes",
      },
    ],
    rows.slice(0, 8).map((i) => `line ${lines[i]}: ${Number(values[i].toPrecision(6))}`),
  );
}

/**
 * Moisture of which some values are fractions and some percent, as after the change of a probe: a fraction never exceeds 1, and hardly any soil is drier
 * than 1 %. Undefined for one unit.
 */
function twoMoistureUnits(
  { values, plan }: RawColumn,
  { answers, lines }: SettleContext,
): ((value: number) => number) | Stop | undefined {
  let fractions = 0;
  let percents = 0;
  let change = -1;
  let before = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    if (!(value > 0)) continue;
    const size = value <= 1 ? 1 : 2;
    if (size === 1) fractions++;
    else percents++;
    if (change < 0 && before !== 0 && size !== before) change = i;
    before = size;
  }
  if (fractions < 2 || percents < 2) return undefined;
  if (answers["moisture-unit"] !== "percent-above-1") {
    return ask(
      "moisture-unit",
      `"${plan.header}" has ${fractions} values up to 1 and ${percents} above. Does it change from fractions to percent?`,
      [{ value: "percent-above-1", meaning: "values above 1 are percent, the others fractions (m3/m3)" }],
      [`line ${lines[change]}: ${values[change]}`],
    );
  }
  const percent = unitOf("percent", "moisture");
  return (value) => (value > 1 && percent ? percent.toKept(value) : value);
}
