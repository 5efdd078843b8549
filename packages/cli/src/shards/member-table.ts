import {
  type Draw,
  type DrawSource,
  defaultPriors,
  drawMaker,
  type EnsembleLayout,
  type EnsemblePlan,
  type MemberOutcome,
} from "rootledger/chance";
import type { Column } from "../print/column.js";

/** One member, one programme on one soil, one tree. */
export interface MemberRow {
  readonly outcome: MemberOutcome;
  readonly draw: Draw;
  /** Places among the layout's arms and trees. */
  readonly arm: number;
  readonly tree: number;
}

/**
 * The columns of the table of members: who, how it ended, the draw, every measure. Units stand in the names; what failed has
 * its reason and no measures.
 */
export function memberColumns(plan: EnsemblePlan, layout: EnsembleLayout): Column<MemberRow>[] {
  const { arms, measures, trees } = layout;
  const text = (name: string, description: string, of: Column<MemberRow>["of"]): Column<MemberRow> => ({
    ...{ name, type: "string", description, of },
  });
  const place = (row: MemberRow, m: number): number => (row.arm * measures.length + m) * trees.length + row.tree;
  return [
    {
      name: "member",
      type: "integer",
      description: "number of the member, from 0",
      of: ({ outcome }) => outcome.member,
    },
    text("soil", "name of the soil", ({ arm }) => arms[arm]?.soil),
    text("programme", "name of the watering programme", ({ arm }) => arms[arm]?.programme),
    text("tree", "mean, under-fed or over-fed", ({ tree }) => trees[tree]),
    text("status", "finished or failed", ({ outcome }) => ("failure" in outcome ? "failed" : "finished")),
    text("fault", "why the member failed; empty if it finished", ({ outcome }) =>
      "failure" in outcome ? outcome.failure : undefined,
    ),
    ...drawnUnits(plan).map(
      ({ id, unit }, i): Column<MemberRow> => ({
        ...{ name: `draw_${id}_${unit}`, type: "number", unit, description: `what was drawn for ${id}` },
        of: ({ draw }) => draw.values[i],
      }),
    ),
    ...measures.map(
      ({ id, unit }, m): Column<MemberRow> => ({
        ...{ name: `${id}_${unit}`, type: "number", unit, description: `the measure ${id} over the season` },
        of: (row) => ("failure" in row.outcome ? undefined : row.outcome.values[place(row, m)]),
      }),
    ),
  ];
}

/** Makes the rows of a member: every arm, every tree. */
export function memberRows(
  draws: DrawSource,
  { arms, trees }: EnsembleLayout,
): (outcome: MemberOutcome) => MemberRow[] {
  const drawOf = drawMaker(draws);
  return (outcome) => {
    const draw = drawOf(outcome.member);
    return arms.flatMap((_, arm) => trees.map((__, tree): MemberRow => ({ outcome, draw, arm, tree })));
  };
}

/** The drawn unknowns with their units, which a table of one's own shares with the priors. */
function drawnUnits({ comparison, draws, weatherYears }: EnsemblePlan): { id: string; unit: string }[] {
  if (draws.kind === "priors") return draws.priors.unknowns.map(({ id, unit }) => ({ id, unit }));
  const known = defaultPriors(comparison, { weatherYears: Math.max(1, weatherYears.length) }).unknowns;
  return draws.ids.map((id) => ({ id, unit: known.find((one) => one.id === id)?.unit ?? "" }));
}
