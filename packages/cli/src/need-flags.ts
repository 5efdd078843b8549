/** Options of `rootledger need` that stand for a file: one span, one tree. */
export const needFlags = [
  "et0-mm-per-day",
  "pan-mm-per-day",
  "pan-coefficient",
  "kc",
  "crop-factor",
  "hot-day-mm-per-day",
  "days",
  "tree-spacing-m",
  "row-spacing-m",
  "canopy-m",
  "height-m",
  "cover",
  "cover-fraction",
  "efficiency",
  "leaching",
  "given-l-per-day",
  "weather",
  "latitude-deg",
  "elevation-m",
  "wind-height-m",
  "et0-method",
  "longest-gap-days",
  "crop",
  "scenario",
] as const;

type Flag = (typeof needFlags)[number];

export type NeedFlags = Readonly<Partial<Record<Flag, string>>>;

/** Days of a span where none is said: the figures of a day stand for a month of this length. */
const usualDays = 30;

/** The need file that the options stand for; what is missing or not a number is left for the parser to say. */
export function needFileOf(flags: NeedFlags): unknown {
  const { "given-l-per-day": given, cover } = flags;
  const pan = flags["pan-mm-per-day"] !== undefined;
  const factor = flags["crop-factor"] !== undefined;
  const period = {
    name: "day",
    days: numberOf(flags.days) ?? usualDays,
    referenceMmPerDay: numberOf(pan ? flags["pan-mm-per-day"] : flags["et0-mm-per-day"]),
    hotDayMmPerDay: numberOf(flags["hot-day-mm-per-day"]),
    coefficient: numberOf(factor ? flags["crop-factor"] : flags.kc),
  };
  const file = {
    format: 1,
    name: "need by options",
    treeSpacingM: numberOf(flags["tree-spacing-m"]),
    rowSpacingM: numberOf(flags["row-spacing-m"]),
    canopyDiameterM: numberOf(flags["canopy-m"]),
    heightM: numberOf(flags["height-m"]),
    reference: referenceOf(pan, factor, flags["pan-coefficient"]),
    ...(flags.weather === undefined ? { periods: [period] } : { weather: weatherOf(flags, flags.weather) }),
    cover: cover === undefined ? undefined : { rule: cover, coverFraction: numberOf(flags["cover-fraction"]) },
    efficiencyFraction: numberOf(flags.efficiency),
    leachingFraction: numberOf(flags.leaching),
    practice: given === undefined ? undefined : [{ name: "given now", litresPerTreePerDay: numberOf(given) }],
    scenario: flags.scenario,
  };
  return JSON.parse(JSON.stringify(file));
}

const weatherOf = (flags: NeedFlags, file: string) => ({
  file,
  latitudeDeg: numberOf(flags["latitude-deg"]),
  elevationM: numberOf(flags["elevation-m"]),
  windHeightM: numberOf(flags["wind-height-m"]),
  et0Method: flags["et0-method"],
  panCoefficient: numberOf(flags["pan-coefficient"]),
  longestGapDays: numberOf(flags["longest-gap-days"]),
  coefficient: numberOf(flags.kc),
  crop: flags.crop === undefined ? undefined : { preset: flags.crop },
});

function referenceOf(pan: boolean, factor: boolean, panCoefficient: string | undefined) {
  if (!pan) return { kind: "et0" };
  return factor ? { kind: "pan-factor" } : { kind: "pan", panCoefficient: numberOf(panCoefficient) };
}

/** A number, or the text as it is where it is none, for the parser to refuse. */
function numberOf(text: string | undefined): number | string | undefined {
  if (text === undefined) return undefined;
  const value = Number(text);
  return text.trim() === "" || !Number.isFinite(value) ? text : value;
}
