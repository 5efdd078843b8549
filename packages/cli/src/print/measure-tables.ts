import type { EnsembleResult, UnknownsRanking } from "rootledger/chance";
import type { ArmAnswer, ComparisonResult } from "rootledger/compare";
import type { Column } from "./column.js";
import { type Table, tableOf, textColumn } from "./table.js";

/** A number whose unit another column of the line names. */
const inUnit = <Row>(name: string, description: string, of: Column<Row>["of"]): Column<Row> => ({
  ...{ name, type: "number", description: `${description}, in the line's unit`, of },
});
const share = <Row>(name: string, description: string, of: Column<Row>["of"]): Column<Row> => ({
  ...{ name, type: "number", unit: "fraction", description, of },
});
interface Place {
  readonly soil: string;
  readonly from?: string | undefined;
  readonly to: string;
  readonly tree: string;
  readonly measureId: string;
  readonly unit: string;
}
const soil: Column<Place> = textColumn("soil", "name of the soil", (row) => row.soil);
const tree: Column<Place> = textColumn("tree", "mean, under-fed or over-fed", (row) => row.tree);
const measureId: Column<Place> = textColumn("measure", "name of the measure", (row) => row.measureId);
const unit: Column<Place> = textColumn("unit", "unit of the line's numbers", (row) => row.unit);
const from: Column<Place> = textColumn("from", "programme that the other is held against", (row) => row.from);
const to: Column<Place> = textColumn("to", "programme that is held against it", (row) => row.to);

/** Every measure of every arm and tree, one per line. */
export function measuresTable({ arms }: ComparisonResult): Table {
  const rows = arms.flatMap(({ soil: on, programme, result }) =>
    result.measures.flatMap(({ id, unit: inIt, values }) =>
      result.trees.map((of, t) => ({
        ...{ soil: on, to: programme, tree: of, measureId: id, unit: inIt, value: values[t] },
      })),
    ),
  );
  const programme: Column<Place> = textColumn("programme", "name of the watering programme", (row) => row.to);
  const columns = [soil, programme, tree, measureId, unit];
  return tableOf(
    "measures",
    "Every measure of every programme, soil and tree",
    [...columns, inUnit("value", "the measure over the season", (row: (typeof rows)[number]) => row.value)],
    rows,
  );
}

/** Every difference of every arm beside a comparison, one per line. */
export function armsTable(answers: readonly ArmAnswer[]): Table {
  const rows = answers.flatMap(({ id, engine, days, differences }) =>
    differences.map((difference) => ({ ...difference, arm: id, engine, days })),
  );
  type Row = (typeof rows)[number];
  const columns: Column<Row>[] = [
    textColumn("arm", "what is other than in the comparison", (row) => row.arm),
    textColumn("engine", "bucket or richards", (row) => row.engine),
    { name: "days", type: "integer", unit: "d", description: "length of the season", of: (row) => row.days },
    ...[soil, from, to, tree, measureId, unit],
    inUnit("fromValue", "the measure under from", (row) => row.fromValue),
    inUnit("toValue", "the measure under to", (row) => row.toValue),
    inUnit("difference", "toValue less fromValue", (row) => row.difference),
    inUnit("floor", "size below which nothing is claimed", (row) => row.floor),
    textColumn("verdict", "rises, falls or no clear difference", (row) => row.verdict),
  ];
  return tableOf("arms", "The same differences where something else changes", columns, rows);
}

/** Every paired difference and every band over the draws, one per line. */
export function ensembleTable({ differences, bands }: EnsembleResult): Table {
  const rows = [
    ...differences.map((difference) => ({ kind: "difference", ...difference })),
    ...bands.map((band) => ({
      ...band,
      ...{ kind: "band", from: band.programme, to: "" },
      ...{ floor: undefined, risesShare: undefined, fallsShare: undefined, verdict: undefined },
    })),
  ];
  type Row = (typeof rows)[number];
  const columns: Column<Row>[] = [
    textColumn("kind", "difference: to less from, draw by draw; band: the programme in from alone", (row) => row.kind),
    ...[soil, from, to, tree, measureId, unit],
    inUnit("low", "5 % of the draws are below", (row) => row.low),
    inUnit("median", "middle of the draws", (row) => row.median),
    inUnit("high", "5 % of the draws are above", (row) => row.high),
    inUnit("floor", "size below which nothing is claimed; empty for a band", (row) => row.floor),
    share("risesShare", "share of the draws in which it rises by more than the floor", (row) => row.risesShare),
    share("fallsShare", "share of the draws in which it falls by more than the floor", (row) => row.fallsShare),
    textColumn("verdict", "rises, falls or no clear difference; empty for a band", (row) => row.verdict),
  ];
  return tableOf("draws", "Differences of programmes and bands of measures over the draws", columns, rows);
}

/** Every effect of every unknown on every answer, one per line. */
export function rankingTable({ method, answers }: UnknownsRanking): Table {
  const rows = answers.flatMap(({ unknowns, ...answer }) => unknowns.map((effect) => ({ ...answer, ...effect })));
  type Row = (typeof rows)[number];
  const said = (name: string, screen: string, shares: string, of: Column<Row>["of"]): Column<Row> => ({
    ...{ name, type: "number", description: `screen: ${screen}; shares: ${shares}`, of },
  });
  const columns: Column<Row>[] = [
    textColumn("method", "screen (Morris) or shares (Sobol)", () => method),
    ...[soil, from, to, tree, measureId, unit],
    textColumn("unknown", "what is unknown", (row) => row.id),
    said("effect", "mean absolute change, in the line's unit", "total index", (row) => row.effect),
    said("alone", "mean change with its sign", "first-order index", (row) => row.alone),
    said("together", "spread of the change", "total less first order", (row) => row.together),
    share("weight", "this effect over the sum of all effects on the answer", (row) => row.weight),
  ];
  return tableOf("unknowns", "What each unknown does to each answer", columns, rows);
}
