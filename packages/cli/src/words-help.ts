/** What `--help` prints. */
export const help = `rootledger: the water and air account of a shallow root zone under drip irrigation

Usage
  rootledger compare FILE             two to four watering programmes side by side, on each soil
  rootledger simulate FILE            one programme on one soil over a season
  rootledger ensemble FILE            the same over draws of what is unknown: bands, paired differences, verdicts
  rootledger merge FOLDER [FOLDER ..] the answer of an ensemble that was run in shards
  rootledger calibrate FILE           a few unknowns fitted to soil-moisture records, with scores and intervals
  rootledger convergence FILE         what halving the steps and the layers changes, and which step is safe
  rootledger need FILE                litres per tree and per hectare that trees want; or by options
  rootledger plan FILE                year by year: canopy, litres, open emitters, lines, fertiliser
  rootledger advise FILE              programmes of the same water that are better than today's in something, and why
  rootledger sheet FILE               half a page for the grower: litres, hours, starts, what would prove it wrong
  rootledger truth [FOLDER]           every published figure beside ours
  rootledger weather FILE [FILE ...]  what was understood of a station or sensor file; several are joined by date
  rootledger schema NAME              JSON Schema of a file or an answer: scenario, comparison, simulate-result ...
  rootledger validate-scenario FILE   checks a scenario or comparison file, runs nothing

Options
  --json      the whole answer as JSON
  --csv       simulate: the day table; compare: every measure, one per line; need: the spans;
              weather: its days as a weather file, or its records where it holds no weather
  --schema    what the columns of --csv are: type, unit, meaning (Frictionless data package)
  --engine E  simulate, compare, ensemble: bucket (fast) or richards (the referee, far slower)
  --members N --seed S --workers W  ensemble (200 draws, seed 1, one worker a core); compare draws only if asked
  --draws CSV   the same two: draws of your own, a column for each unknown, a row for each member
  --record CSV  the same two: a longer daily weather file; its other years are drawn too
  --arms all    compare: what would the answer be with another dose, start, weather, soil, engine or tree;
                or some of: daily-single, dose-above, wet-spell, slow-engine and so on, parted by commas
  --keep FOLDER compare --arms: keeps each arm's answer in a folder and finds it there next time
  --rank HOW    ensemble: which unknown matters and what to measure; screen (an order) or shares (of the
                variance; wants thousands of members)
  --shard I/N --out FOLDER   ensemble: one of N shards, its table as CSV and Parquet; merge --out FOLDER: one table of all
  --readings CSV --fit k-sat,kcb --block-days 10 --noise 0.02  calibrate: the records, what to fit, days of the
                blocks that are fitted and scored in turn, what one reading may miss, m3/m3
  --days N --from-day N --water same|may-change --members N --seed S --workers W --language en|es
              advise: days that count (28 or what fits), the first of them (7), draws beside the scenario (4)
  --check DAYS  advise: the set by the slow engine too, and whether the ranking holds
  --day N --language en|es --units metric|us --as text|html --members N --seed S  sheet (day 0, 40 draws)
  --answer KEY=VALUE  weather: the answer to a question about the file, as often as needed
  --help      this text
  --version   the version

Options of need, instead of a file
  --et0-mm-per-day N, or --pan-mm-per-day N with --pan-coefficient N or --crop-factor N
  --kc N --tree-spacing-m N --row-spacing-m N --canopy-m N --height-m N --hot-day-mm-per-day N --days N
  --cover whole-ground | canopy-ground | stated-cover (with --cover-fraction N) | density
          | relative-density | keller-karmeli | freeman-garzoli | decroix
  --efficiency N --leaching N --given-l-per-day N
  --weather FILE --latitude-deg=N --elevation-m N [--wind-height-m N] [--et0-method M]
              with --kc N or --crop PRESET: need by month from a daily weather or station file, in place of
              --et0-mm-per-day; --longest-gap-days N fills gaps of temperature by a line
  --scenario FILE  the given water run through that file's season: where it goes

Files are JSON; weather files that they name are read from the same folder.
Exit code 0: done; 1: faults in the input, one line each; 2: internal error.
`;
