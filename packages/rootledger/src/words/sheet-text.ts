import { tensiometerRangeKPa } from "../advise/judge-readings.js";
import type { ExpectedReading, Sheet } from "../advise/sheet.js";
import { cmPerInch, hectaresPerAcre, litresPerGallon } from "../units.js";
import { filledWords } from "./filled-words.js";
import type { SheetWords } from "./sheet-words.js";

/** How numbers, dates and units of a place are written; the caller knows the place. */
export interface SheetFormat {
  readonly language: "en" | "es";
  /** At most so many significant digits. */
  readonly number: (value: number, digits: number) => string;
  /** A date as the reader writes it. */
  readonly date: (isoDate: string) => string;
  readonly units: {
    readonly water: "L" | "gal";
    readonly depth: "mm" | "in";
    readonly tension: "kPa" | "cbar";
    readonly area: "ha" | "ac";
    readonly length: "cm" | "in";
  };
}

/** A sheet in words: one entry a paragraph or list. */
export interface SheetText {
  readonly title: string;
  readonly lines: readonly string[];
  readonly expectedTitle: string;
  readonly expected: readonly string[];
  readonly expectedThen: string;
  readonly stopIfTitle: string;
  readonly stopIf: readonly string[];
  readonly small: readonly string[];
  readonly readHere: string;
  readonly adviser: string;
}

const minutesPerDay = 24 * 60;
const [, tensiometerEndKPa] = tensiometerRangeKPa;

/**
 * A sheet in the words and units of a place.
 *
 * @example sheetText(sheet, sheetEnglish, format).title
 */
export function sheetText(sheet: Sheet, words: SheetWords, format: SheetFormat): SheetText {
  const { units, number, date } = format;
  const litres = (l: number): string =>
    units.water === "L" ? `${number(l, 3)} L` : `${number(l / litresPerGallon, 3)} gal`;
  const length = (cm: number): string =>
    units.length === "cm" ? `${number(cm, 2)} cm` : `${number(cm / cmPerInch, 2)} in`;
  const tension = (kPa: number): string => `${number(kPa, 2)} ${units.tension}`;
  const depth =
    units.depth === "mm" ? `${number(sheet.depthMm, 2)} mm` : `${number(sheet.depthMm / 10 / cmPerInch, 2)} in`;
  const area =
    units.area === "ha"
      ? `${number(sheet.m3PerHa, 3)} m³/ha`
      : `${number((sheet.m3PerHa * 1000 * hectaresPerAcre) / litresPerGallon, 3)} gal/ac`;
  const { open, plugged, flowLPerH } = sheet.emitters;
  const stopsLater = Math.floor(Math.round(sheet.latestStopMinutes) / minutesPerDay);
  const stop = stopsLater === 0 ? words.stop : stopsLater === 1 ? words.stopNextDay : words.stopLater;
  const beforeRun = sheet.expected.find((reading) => reading.when === "before-run");
  const terms = {
    block: sheet.blockName,
    from: date(sheet.fromDate),
    to: date(sheet.expiryDate),
    litres: litres(sheet.litresPerTree),
    depth,
    area,
    stop: clock(sheet.latestStopMinutes),
    later: String(stopsLater),
    open: number(open, 3),
    plugged: String(plugged),
    flow: `${units.water === "L" ? number(flowLPerH, 2) : number(flowLPerH / litresPerGallon, 2)} ${units.water}/h`,
    days: String(sheet.everyDays),
    dates: sheet.wateringDates.map(date).join(", "),
    shallow: length(sheet.expected[0]?.depthCm ?? 20),
    air: tension(sheet.airReturnKPa),
    pull: tension(sheet.pullLimitKPa),
    driest: tension(beforeRun?.highKPa ?? sheet.pullLimitKPa),
    tree: sheet.treeName,
    soil: sheet.soilName,
    ec: number(sheet.waterEcDsPerM ?? 0, 2),
    weather: sheet.weather.name,
    wfrom: date(sheet.weather.from),
    wto: date(sheet.weather.to),
    programme: sheet.programmeName,
  };
  const days = sheet.everyDays === 1 ? words.everyDay : sheet.everyDays === undefined ? words.onDates : words.everyDays;
  const reading = ({ depthCm, fromLineCm, when, lowKPa, medianKPa, highKPa }: ExpectedReading): string => {
    const own = {
      depth: length(depthCm),
      distance: length(fromLineCm),
      when: words.when[when],
      middle: number(medianKPa, 2),
      low: number(lowKPa, 2),
      high: tension(highKPa),
      end: tension(tensiometerEndKPa),
    };
    return (
      filledWords(words.proves, own) + (highKPa > tensiometerEndKPa ? filledWords(words.beyondTensiometer, own) : "")
    );
  };
  const beyond = beforeRun === undefined ? undefined : beyondLimit(beforeRun, sheet);
  return {
    title: filledWords(words.title, terms),
    lines: [
      filledWords(words.each, terms),
      filledWords(days, terms),
      openingLine(sheet, words, number),
      filledWords(stop, terms),
      filledWords(plugged === 0 ? words.emittersAll : words.emittersPlugged, terms),
      ...(beyond === undefined ? [] : [filledWords(words.expectedBeyond[beyond], terms)]),
    ],
    expectedTitle: words.provesTitle,
    expected: sheet.expected.map(reading),
    expectedThen: words.provesThen,
    stopIfTitle: words.stopIfTitle,
    stopIf: stopIfLines(beyond, beforeRun).map((line) => filledWords(words.stopIf[line], terms)),
    small: [
      filledWords(words.basis, terms),
      filledWords(words.holds, terms),
      ...((sheet.waterEcDsPerM ?? 0) > 0 ? [filledWords(words.saltyWater, terms)] : []),
      ...words.cautions,
    ],
    readHere: words.notesTitle,
    adviser: words.adviser,
  };
}

/** Which limit the programme itself is expected to cross before a run, by the middle of the band. */
function beyondLimit(
  { medianKPa }: ExpectedReading,
  { pullLimitKPa, airReturnKPa }: Sheet,
): "thirsty" | "airless" | undefined {
  if (medianKPa > pullLimitKPa) return "thirsty";
  return medianKPa < airReturnKPa ? "airless" : undefined;
}

/** No line contradicts what the sheet expects; and none asks a tensiometer for more than it can read. */
function stopIfLines(
  beyond: "thirsty" | "airless" | undefined,
  beforeRun: ExpectedReading | undefined,
): readonly (keyof SheetWords["stopIf"])[] {
  if (beyond === "airless") return ["wilting", "thirsty", "standing"];
  if (beyond === undefined) return ["wilting", "airless", "thirsty", "standing"];
  const readable = (beforeRun?.highKPa ?? 0) <= tensiometerEndKPa;
  return ["wilting", "airless", ...(readable ? (["thirstier"] as const) : []), "standing"];
}

function openingLine({ openings }: Sheet, words: SheetWords, number: SheetFormat["number"]): string {
  const of = ({ startMinutes, minutes }: Sheet["openings"][number]) => ({
    start: clock(startMinutes),
    length: duration(minutes, number),
  });
  if (openings.length === 1) return filledWords(words.openingOne, of(openings[0]));
  const list = openings.map((opening) => `${of(opening).start} (${of(opening).length})`).join(", ");
  return filledWords(words.openings, { count: String(openings.length), list });
}

/** Clock time of minutes since midnight; beyond a day it goes on from the next midnight. */
function clock(minutes: number): string {
  const whole = Math.round(minutes) % minutesPerDay;
  return `${String(Math.floor(whole / 60)).padStart(2, "0")}:${String(whole % 60).padStart(2, "0")}`;
}

function duration(minutes: number, number: SheetFormat["number"]): string {
  const whole = Math.round(minutes);
  if (whole < 1) return `${number(minutes * 60, 2)} s`;
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  return [hours > 0 ? `${hours} h` : "", rest > 0 ? `${rest} min` : ""].filter((part) => part !== "").join(" ");
}
