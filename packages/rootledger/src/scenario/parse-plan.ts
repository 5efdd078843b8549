import { z } from "zod";
import type { DefaultUsed } from "../water/result.js";
import { type Fault, fault } from "./faults.js";
import { shapeFaults } from "./parse-issues.js";
import { type ParsedNeed, parseNeed } from "./parse-need.js";
import { type PlanFile, planSchema } from "./schema-plan.js";

/** A checked plan file with its need. */
export interface Plan extends Omit<PlanFile, "need" | "$schema" | "rootsPerCanopy" | "nutrientsGPerMatureTree"> {
  readonly rootsPerCanopy: number;
  readonly nutrientsGPerMatureTree: Readonly<Record<string, number>>;
  readonly need: Extract<ParsedNeed, { ok: true }>["question"];
  readonly treeSpacingM: number;
  readonly rowSpacingM: number;
}

/** A plan, or every fault of its file. */
export type ParsedPlan =
  | { readonly ok: true; readonly plan: Plan; readonly defaultsUsed: readonly DefaultUsed[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Checks a plan file and the need file in it. Never throws; every fault is returned at once.
 *
 * @param input the parsed JSON
 * @example parsePlan({}).ok // false
 */
export function parsePlan(input: unknown): ParsedPlan {
  const shape = shapeFaults(planSchema, input);
  const inside = typeof input === "object" && input !== null && "need" in input ? parseNeed(input.need) : undefined;
  const needFaults =
    inside === undefined || inside.ok
      ? []
      : inside.faults.map((f) => ({ ...f, path: f.path === "" ? "need" : `need.${f.path}` }));
  if (inside === undefined && shape.every(({ path }) => path !== "need" && path !== "")) {
    needFaults.push(fault("missing", "need", undefined, { expected: "a need file" }));
  }
  const found = [...shape, ...needFaults];
  if (shape.length > 0 || inside === undefined || !inside.ok) return { ok: false, faults: found };
  const { need: _, $schema: __, ...file } = planSchema.parse(input);
  const faults = [...notRising(file.agesYears, "agesYears"), ...canopyFaults(file)];
  const { spacing } = inside.question.tree;
  if (spacing === undefined)
    faults.push(fault("missing", "need.treeSpacingM", undefined, { expected: "a length in m" }));
  else if (file.emitterSpacingM > spacing.treeSpacingM) {
    faults.push(
      fault("emitters-too-far-apart", "emitterSpacingM", file.emitterSpacingM, { spacing: spacing.treeSpacingM }),
    );
  }
  if (faults.length > 0 || spacing === undefined) return { ok: false, faults };
  return {
    ok: true,
    plan: {
      ...file,
      ...spacing,
      rootsPerCanopy: file.rootsPerCanopy ?? 1,
      nutrientsGPerMatureTree: file.nutrientsGPerMatureTree ?? {},
      need: inside.question,
    },
    defaultsUsed: [
      ...(file.rootsPerCanopy === undefined
        ? [{ path: "rootsPerCanopy", value: "1", source: "our choice, no source: roots as wide as the canopy; dig" }]
        : []),
      ...inside.defaultsUsed.map((used) => ({ ...used, path: `need.${used.path}` })),
    ],
  };
}

/** JSON Schema (draft 2020-12) of the plan file. @example planJsonSchema().required */
export const planJsonSchema = (): z.core.JSONSchema.BaseSchema => z.toJSONSchema(planSchema);

const canopyFaults = ({ canopy }: Pick<PlanFile, "canopy">): Fault[] =>
  notRising(
    canopy.map(({ ageYears }) => ageYears),
    "canopy",
    ".ageYears",
  );

const notRising = (ages: readonly number[], path: string, field = ""): Fault[] =>
  ages.flatMap((age, i) =>
    i > 0 && !(age > ages[i - 1])
      ? [fault("not-above-minimum", `${path}[${i}]${field}`, age, { minimum: ages[i - 1] })]
      : [],
  );
