import { parseArgs } from "node:util";
import { version } from "rootledger";
import { compareCommand } from "./compare.js";
import { exit, type Io } from "./io.js";
import { simulateCommand } from "./simulate.js";
import { validateCommand } from "./validate-scenario.js";
import { words } from "./words.js";

/** How a command was asked to answer. */
export interface Asked {
  readonly file: string;
  readonly output: "table" | "json" | "csv";
}

type Command = (asked: Asked, io: Io) => Promise<number>;

const commands: Readonly<Record<string, { readonly run: Command; readonly csv: boolean }>> = {
  simulate: { run: simulateCommand, csv: true },
  compare: { run: compareCommand, csv: true },
  "validate-scenario": { run: validateCommand, csv: false },
};

/**
 * The whole command line. Resolves to the exit code: 0 done, 1 faults in the input, 2 internal.
 *
 * @example await main(["compare", "data/demo/comparison.json"], io)
 */
export async function main(argv: readonly string[], io: Io): Promise<number> {
  try {
    return await answer(argv, io);
  } catch (error) {
    io.stderr(`${words.internal} ${error instanceof Error ? error.message : String(error)}\n`);
    return exit.internal;
  }
}

async function answer(argv: readonly string[], io: Io): Promise<number> {
  const misused = (what: string): number => {
    io.stderr(`${what}; ${words.seeHelp}\n`);
    return exit.faults;
  };
  const read = readArguments(argv);
  if (typeof read === "string") return misused(read);
  const { values, positionals } = read;
  const [name, file, ...rest] = positionals;
  if (values.version) {
    io.stdout(`${version}\n`);
    return exit.done;
  }
  if (values.help) {
    io.stdout(words.help);
    return exit.done;
  }
  if (name === undefined) return misused(words.noCommand);
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (command === undefined) return misused(`${words.unknownCommand} ${name}`);
  if (file === undefined || rest.length > 0) return misused(words.oneFile);
  if (values.json && values.csv) return misused(words.oneOutput);
  if (values.csv && !command.csv) return misused(words.noCsv);
  return command.run({ file, output: values.json ? "json" : values.csv ? "csv" : "table" }, io);
}

function readArguments(argv: readonly string[]) {
  try {
    return parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        json: { type: "boolean", default: false },
        csv: { type: "boolean", default: false },
        help: { type: "boolean", short: "h", default: false },
        version: { type: "boolean", short: "V", default: false },
      },
    });
  } catch (error) {
    return (error instanceof Error ? error.message : String(error)).split("\n")[0]!.replace(/\.$/, "");
  }
}
