import { parseArgs } from "node:util";
import { version } from "rootledger";
import type { EngineName } from "rootledger/scenario";
import { adviseCommand } from "./advise.js";
import { adviseFlags } from "./advise-flags.js";
import { armFlags } from "./arms.js";
import { calibrateCommand } from "./calibrate.js";
import { calibrateFlags } from "./calibrate-flags.js";
import { compareCommand } from "./compare.js";
import { convergenceCommand } from "./convergence.js";
import { ensembleCommand } from "./ensemble.js";
import { ensembleFlags, rankingFlags } from "./ensemble-flags.js";
import { exit, type Io } from "./io.js";
import { mergeCommand, mergeFlags } from "./merge.js";
import { needCommand } from "./need.js";
import { needFlags } from "./need-flags.js";
import { planCommand } from "./plan.js";
import { misused, Refused, usable } from "./refused.js";
import { schemaCommand } from "./schema.js";
import { sheetCommand } from "./sheet.js";
import { sheetFlags } from "./sheet-flags.js";
import { simulateCommand } from "./simulate.js";
import { truthCommand } from "./truth.js";
import { validateCommand } from "./validate-scenario.js";
import { weatherCommand } from "./weather.js";
import { words } from "./words.js";

/** How a command was asked to answer. */
export interface Asked {
  /** Empty where none was given. */
  readonly file: string;
  /** Files after the first, for a command that takes several. */
  readonly moreFiles: readonly string[];
  /** `schema`: what the columns of the CSV are. */
  readonly output: "table" | "json" | "csv" | "schema";
  /** Replaces the engine that the file names. */
  readonly engine?: EngineName;
  /** The command's own options, as they were written. */
  readonly flags: Readonly<Record<string, string>>;
  /** Each `--answer key=value`. */
  readonly answers: readonly string[];
}

type Command = (asked: Asked, io: Io) => Promise<number>;

interface Entry {
  readonly run: Command;
  readonly csv: boolean;
  readonly file: "needed" | "optional" | "several" | "folders";
  /** Whether `--engine` may replace the engine that the file names. */
  readonly engine?: true;
  readonly flags?: readonly string[];
}

const commands: Readonly<Record<string, Entry>> = {
  advise: { run: adviseCommand, csv: true, file: "needed", flags: adviseFlags },
  plan: { run: planCommand, csv: true, file: "needed" },
  schema: { run: schemaCommand, csv: false, file: "needed" },
  sheet: { run: sheetCommand, csv: false, file: "needed", flags: sheetFlags },
  simulate: { run: simulateCommand, csv: true, file: "needed", engine: true },
  compare: { run: compareCommand, csv: true, file: "needed", engine: true, flags: [...ensembleFlags, ...armFlags] },
  calibrate: { run: calibrateCommand, csv: false, file: "needed", flags: calibrateFlags },
  convergence: { run: convergenceCommand, csv: false, file: "needed" },
  ensemble: { run: ensembleCommand, csv: true, file: "needed", engine: true, flags: rankingFlags },
  merge: { run: mergeCommand, csv: true, file: "folders", flags: mergeFlags },
  need: { run: needCommand, csv: true, file: "optional", flags: needFlags },
  truth: { run: truthCommand, csv: false, file: "optional" },
  "validate-scenario": { run: validateCommand, csv: false, file: "needed" },
  weather: { run: weatherCommand, csv: true, file: "several" },
};

const ownFlags: readonly string[] = Object.values(commands).flatMap(({ flags }) => flags ?? []);

/**
 * The whole command line. Resolves to the exit code: 0 done, 1 faults in the input, 2 internal.
 *
 * @example await main(["compare", "data/demo/comparison.json"], io)
 */
export async function main(argv: readonly string[], io: Io): Promise<number> {
  try {
    return await answer(argv, io);
  } catch (error) {
    if (error instanceof Refused) {
      io.stderr(error.message);
      return exit.faults;
    }
    io.stderr(`${words.internal} ${error instanceof Error ? error.message : String(error)}\n`);
    return exit.internal;
  }
}

async function answer(argv: readonly string[], io: Io): Promise<number> {
  const { values, positionals, flags } = usable(readArguments(argv));
  const [name, file, ...moreFiles] = positionals;
  if (values.version) {
    io.stdout(`${version}\n`);
    return exit.done;
  }
  if (values.help) {
    io.stdout(words.help);
    return exit.done;
  }
  if (name === undefined) throw misused(words.noCommand);
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (command === undefined) throw misused(`${words.unknownCommand} ${name}`);
  const several = command.file === "several" || command.file === "folders";
  if (command.file === "needed" && (file === undefined || moreFiles.length > 0)) throw misused(words.oneFile);
  if (several && file === undefined) throw misused(words.fileNeeded);
  if (moreFiles.length > 0 && !several) throw misused(words.atMostOneFile);
  const answers = values.answer ?? [];
  if (answers.length > 0 && command.file !== "several") throw misused(`--answer ${words.notAnOption} ${name}`);
  const strange = Object.keys(flags).find((flag) => !(command.flags ?? []).includes(flag));
  if (strange !== undefined) throw misused(`--${strange} ${words.notAnOption} ${name}`);
  const outputs = (["json", "csv", "schema"] as const).filter((name) => values[name]);
  if (outputs.length > 1) throw misused(words.oneOutput);
  if ((values.csv || values.schema) && !command.csv) throw misused(`${name} ${words.noCsv}`);
  const { engine } = values;
  if (engine !== undefined && !command.engine) throw misused(`--engine ${words.notAnOption} ${name}`);
  if (engine !== undefined && engine !== "bucket" && engine !== "richards") throw misused(words.unknownEngine);
  const output = outputs[0] ?? "table";
  const asked = { file: file ?? "", moreFiles, output, flags, answers } as const;
  return command.run(engine === undefined ? asked : { ...asked, engine }, io);
}

function readArguments(argv: readonly string[]) {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        json: { type: "boolean", default: false },
        csv: { type: "boolean", default: false },
        schema: { type: "boolean", default: false },
        answer: { type: "string", multiple: true },
        engine: { type: "string" },
        help: { type: "boolean", short: "h", default: false },
        version: { type: "boolean", short: "V", default: false },
        ...Object.fromEntries(ownFlags.map((flag) => [flag, { type: "string" } as const])),
      },
    });
    const flags: Record<string, string> = {};
    for (const [flag, value] of Object.entries(values)) {
      if (typeof value === "string" && ownFlags.includes(flag)) flags[flag] = value;
    }
    return { values, positionals, flags };
  } catch (error) {
    // Without the hint how to pass a file name that starts with a dash; the other hints help.
    const said = error instanceof Error ? error.message : String(error);
    return said
      .replace(/\. To specify a positional.*$/s, "")
      .replaceAll("\n", " ")
      .replace(/\.$/, "");
  }
}
