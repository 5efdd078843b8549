import { z } from "zod";
import type { DefaultUsed } from "../water/result.js";
import type { DayAir } from "./day-air.js";
import { defaults } from "./defaults.js";
import type { Fault } from "./faults.js";
import { migrated } from "./migrate.js";
import { withOwnLines } from "./own-lines.js";
import { filledBlock } from "./parse-block.js";
import { blockFaults, nameFaults, needsRew, programmeFaultsAt, soilFaultsAt } from "./parse-checks.js";
import { pick } from "./parse-default.js";
import { readPart, shapeFaults, valueAt } from "./parse-issues.js";
import { filledProgramme } from "./parse-programme.js";
import { withRew } from "./parse-rew.js";
import { filledSoil } from "./parse-soil.js";
import { readWeather, type WeatherRead } from "./parse-weather.js";
import type { Comparison, EngineName, Scenario, Soil, Start } from "./scenario.js";
import { treeSchema } from "./schema-block.js";
import {
  type ComparisonFile,
  comparisonSchema,
  type ScenarioFile,
  type StartFile,
  scenarioSchema,
  seasonSchema,
  weatherSchema,
} from "./schema-file.js";
import type { SoilFile } from "./schema-soil.js";
import { airFaults } from "./tree-faults.js";

/** Texts of the files that the input names, by the name it uses. */
export type Files = Readonly<Record<string, string>>;

interface Refused {
  readonly ok: false;
  readonly faults: readonly Fault[];
}

interface Accepted {
  readonly ok: true;
  readonly defaultsUsed: readonly DefaultUsed[];
  /** What was seen in the weather file and left as it is. */
  readonly notes: readonly string[];
}

/** A scenario, or every fault of its file. */
export type ParsedScenario = (Accepted & { readonly scenario: Scenario }) | Refused;
/** A comparison, or every fault of its file. */
export type ParsedComparison = (Accepted & { readonly comparison: Comparison }) | Refused;

/**
 * Checks a scenario file and fills in its defaults, each of which is listed. Never throws and repairs nothing: every fault of
 * the file and of its weather is returned at once.
 *
 * @param input the parsed JSON
 * @param files texts of the weather files it names; see `filesNamed`
 * @example parseScenario(JSON.parse(text), { "weather.csv": csv }).ok
 */
export function parseScenario(input: unknown, files: Files): ParsedScenario {
  return parse(scenarioSchema, input, files, otherFaultsOfScenario, (file, read, used, notes) => {
    const { block, ...common } = commonOf(file, read, used, notes);
    const soil = soilOf(file, file.soil, "soil", used);
    const programme = filledProgramme(file.programme, "programme", groundM2(file), used);
    return { scenario: { ...common, block: withOwnLines(block, programme), soil, programme } };
  });
}

/**
 * Checks a comparison file as `parseScenario` does a scenario file.
 *
 * @example parseComparison(JSON.parse(text), { "weather.csv": csv }).ok
 */
export function parseComparison(input: unknown, files: Files): ParsedComparison {
  return parse(comparisonSchema, input, files, otherFaultsOfComparison, (file, read, used, notes) => ({
    comparison: {
      ...commonOf(file, read, used, notes),
      remark: file.remark ?? "",
      soils: file.soils.map((soil, i) => soilOf(file, soil, `soils[${i}]`, used)),
      programmes: file.programmes.map((programme, i) =>
        filledProgramme(programme, `programmes[${i}]`, groundM2(file), used),
      ),
    },
  }));
}

/** Names of the files whose texts a scenario or comparison file needs. @example filesNamed({ weather: { file: "w.csv" } }) // ["w.csv"] */
export function filesNamed(input: unknown): readonly string[] {
  const name = valueAt(input, ["weather", "file"]);
  return typeof name === "string" && name !== "" ? [name] : [];
}

function parse<File extends ScenarioFile | ComparisonFile, Out>(
  schema: z.ZodType<File>,
  input: unknown,
  files: Files,
  otherFaults: (file: unknown) => readonly Fault[],
  fill: (file: File, read: SeasonRead, used: DefaultUsed[], notes: string[]) => Out,
): (Accepted & Out) | Refused {
  const now = migrated(input);
  if (!now.ok) return { ok: false, faults: [now.fault] };
  const weatherUsed: DefaultUsed[] = [];
  const read = weatherOf(now.file, files, weatherUsed);
  const ofWeather = read.ok ? airFaultsAt(now.file, read.air) : read.faults;
  const faults = [...shapeFaults(schema, now.file), ...otherFaults(now.file), ...ofWeather];
  if (faults.length > 0 || !read.ok) return { ok: false, faults };
  const used: DefaultUsed[] = [];
  const notes = [...read.notes];
  const out = fill(schema.parse(now.file), read, used, notes);
  return { ok: true, ...out, defaultsUsed: [...used, ...weatherUsed], notes };
}

type SeasonRead = Extract<WeatherRead, { ok: true }>;

function airFaultsAt(file: unknown, air: DayAir): Fault[] {
  const tree = readPart(treeSchema, file, ["block", "tree"]);
  return tree === undefined ? [] : airFaults(tree, "block.tree", air);
}

function weatherOf(file: unknown, files: Files, used: DefaultUsed[]): WeatherRead {
  const weather = readPart(weatherSchema, file, ["weather"]);
  if (weather === undefined) return { ok: false, faults: [] };
  return readWeather(weather, readPart(seasonSchema, file, ["season"]), files, used);
}

const otherFaultsOfScenario = (file: unknown): Fault[] => [
  ...blockFaults(file),
  ...soilFaultsAt(file, ["soil"], "soil"),
  ...programmeFaultsAt(file, ["programme"], "programme"),
];

function otherFaultsOfComparison(file: unknown): Fault[] {
  const count = (list: string): number => readPart(z.array(z.unknown()), file, [list])?.length ?? 0;
  const each = (list: string, of: (path: (string | number)[], name: string) => Fault[]): Fault[] =>
    Array.from({ length: count(list) }, (_, i) => of([list, i], `${list}[${i}]`)).flat();
  return [
    ...blockFaults(file),
    ...each("soils", (path, name) => soilFaultsAt(file, path, name)),
    ...nameFaults(file, "soils"),
    ...each("programmes", (path, name) => programmeFaultsAt(file, path, name)),
    ...nameFaults(file, "programmes"),
  ];
}

function commonOf(
  file: ScenarioFile | ComparisonFile,
  { weather, air }: SeasonRead,
  used: DefaultUsed[],
  notes: string[],
) {
  const { format, name, season } = file;
  return {
    format,
    name,
    season,
    weather,
    block: filledBlock(file.block, "block", { season, weather, air }, used, notes),
    start: filledStart(file.start ?? {}, used),
    engine: pick<EngineName>(used, "engine", file.engine, defaults.engine),
  };
}

function soilOf(file: ScenarioFile | ComparisonFile, soil: SoilFile, path: string, used: DefaultUsed[]): Soil {
  const filled = filledSoil(soil, path, used);
  return needsRew(file) === "with-rew" ? withRew(filled, soil, path, used) : filled;
}

const groundM2 = ({ block }: ScenarioFile | ComparisonFile): number => block.treeSpacingM * block.rowSpacingM;

const filledStart = (file: StartFile, used: DefaultUsed[]): Start => ({
  tensionKPa: pick(used, "start.tensionKPa", file.tensionKPa, defaults.startTensionKPa),
  kind: pick<Start["kind"]>(used, "start.kind", file.kind, defaults.startKind),
});
