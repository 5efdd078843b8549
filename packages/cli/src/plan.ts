import { yearsPlan } from "rootledger/advise";
import { parsePlan } from "rootledger/scenario";
import { exit, type Io } from "./io.js";
import { jsonText } from "./print/json.js";
import { planText } from "./print/plan.js";
import { planTable } from "./print/plan-table.js";
import { tableText } from "./print/table.js";
import { readInput } from "./read-input.js";
import { sound } from "./refused.js";
import type { Asked } from "./run.js";

/** `rootledger plan FILE`: canopy, litres, open emitters and nutrients by year. */
export async function planCommand({ file, output }: Asked, io: Io): Promise<number> {
  const { plan, defaultsUsed } = sound(parsePlan(sound(await readInput(file, io)).value));
  const { offsetsM, emitterSpacingM, treeSpacingM, rowSpacingM, sector, ...rest } = plan;
  const years = yearsPlan({
    ...rest,
    layout: { offsetsM, emitterSpacingM, treeSpacingM, rowSpacingM },
    ...(sector === undefined ? {} : { sector }),
  });
  if (output === "json") io.stdout(jsonText({ name: plan.name, ...years, defaultsUsed }));
  else if (output !== "table") io.stdout(tableText(planTable(years), output));
  else io.stdout(planText(plan.name, years, defaultsUsed));
  return exit.done;
}
