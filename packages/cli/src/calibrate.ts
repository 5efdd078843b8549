import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { calibrate, dampedLeastSquares, parseMoisture } from "rootledger/calibrate";
import { defaultPriors } from "rootledger/chance";
import { calibrateAsked, strangeName } from "./calibrate-flags.js";
import { exit, type Io } from "./io.js";
import { calibrationText } from "./print/calibration.js";
import { jsonText } from "./print/json.js";
import { readText } from "./read-input.js";
import { readScenario } from "./read-scenario.js";
import { faulty, usable } from "./refused.js";
import type { Asked } from "./run.js";
import { words } from "./words.js";
import { calibrateWords } from "./words-calibrate.js";

/** `rootledger calibrate FILE --readings CSV`: a few unknowns fitted to soil-moisture records. */
export async function calibrateCommand({ file, output, flags }: Asked, io: Io): Promise<number> {
  const asked = usable(calibrateAsked(flags));
  const { scenario, defaultsUsed } = await readScenario(file, io);
  const { readingsFile, fit, blockDays, noiseTheta } = asked;
  const text = await readText(readingsFile, io);
  if (!text.ok) throw faulty([{ path: readingsFile, received: text.reason, rule: words.notReadable }]);
  const records = parseMoisture(text.text, scenario.season);
  if (!records.ok) {
    throw faulty(records.faults.map((fault) => ({ ...fault, path: `${readingsFile} ${fault.path}`.trim() })));
  }
  const priors = defaultPriors({ block: scenario.block, soils: [scenario.soil] }).unknowns.filter(
    ({ spread }) => spread.kind !== "choice",
  );
  const known = priors.map(({ id }) => id);
  const strange = strangeName(fit, known);
  if (strange !== undefined) {
    throw faulty([{ path: "--fit", received: strange, rule: `${calibrateWords.fitNames} ${known.join(", ")}` }]);
  }
  const leastSquares = dampedLeastSquares(levenbergMarquardt);
  try {
    const unknowns = priors.filter(({ id }) => fit.includes(id));
    const calibration = calibrate(scenario, records.readings, unknowns, { leastSquares, blockDays, noiseTheta });
    const { scenario: _, ...answer } = calibration;
    if (output === "json") io.stdout(jsonText({ ...answer, missing: records.missing, defaultsUsed }));
    else io.stdout(calibrationText(scenario.name, calibration, records.missing));
    return exit.done;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw faulty([{ path: readingsFile, received: `${records.readings.length} readings`, rule: error.message }]);
  }
}
