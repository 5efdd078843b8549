/** Every text of the command line that is not a number. */
export const words = {
  help: `rootledger: the water and air account of a shallow root zone under drip irrigation

Usage
  rootledger compare FILE             two to four watering programmes side by side, on each soil
  rootledger simulate FILE            one programme on one soil over a season
  rootledger validate-scenario FILE   checks a scenario or comparison file, runs nothing

Options
  --json      the whole answer as JSON
  --csv       simulate: the day table; compare: every measure, one per line
  --help      this text
  --version   the version

Files are JSON; weather files that they name are read from the same folder.
Exit code 0: done; 1: faults in the input, one line each; 2: internal error.
`,
  internal: "rootledger: internal error:",
  seeHelp: "see rootledger --help",
  noCommand: "no command given",
  unknownCommand: "unknown command",
  oneFile: "exactly one file is needed",
  oneOutput: "--json and --csv exclude one another",
  noCsv: "validate-scenario has no --csv",
  wholeFile: "the file",
  notReadable: "must be a file that can be read",
  notJson: "must be JSON",
  still: "still computing:",
} as const;
