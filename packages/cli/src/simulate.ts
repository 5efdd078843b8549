import { createSimulation } from "rootledger";
import { everyPart, inputsKey, treesOf } from "rootledger/scenario";
import { exit, type Io } from "./io.js";
import { dayTable } from "./print/day-table.js";
import { jsonText } from "./print/json.js";
import { resultText } from "./print/result.js";
import { tableText } from "./print/table.js";
import { progress } from "./progress.js";
import { readScenario } from "./read-scenario.js";
import type { Asked } from "./run.js";

/** `rootledger simulate FILE`. */
export async function simulateCommand({ file, output, engine }: Asked, io: Io): Promise<number> {
  const { scenario: asSaid, defaultsUsed, notes } = await readScenario(file, io);
  const scenario = engine === undefined ? asSaid : { ...asSaid, engine };
  const tell = progress(io);
  const simulation = createSimulation(scenario, {
    ...everyPart(scenario),
    trees: treesOf(scenario.block),
  });
  while (simulation.status().kind === "running") {
    simulation.step();
    if (simulation.hour() % 24 === 0) tell(`day ${simulation.hour() / 24} of ${scenario.season.days}`);
  }
  const result = simulation.result();
  if (output === "json")
    io.stdout(jsonText({ ...result, inputsKey: inputsKey(scenario), defaultsUsed, weatherNotes: notes }));
  else if (output !== "table") io.stdout(tableText(dayTable(result), output));
  else io.stdout(resultText(result, scenario.weather.name, notes, defaultsUsed));
  return exit.done;
}
