import type { ProgrammeScene, RuleName } from "../../state/scene.js";
import { amount } from "../number-format.js";
import { areaWaterText, unitText, waterText } from "../quantity.js";

const counts = ["no", "one", "two", "three", "four"];
const rules: Readonly<Record<Exclude<RuleName, "calendar">, string>> = {
  "replace-use": "giving back what was used",
  depletion: "when much is gone",
  tension: "when the sensor is dry",
};

const minutesText = (minutes: number): string =>
  minutes === 60 ? "an hour" : minutes % 60 === 0 ? `${minutes / 60} hours` : `${amount(minutes)} min`;

/** Words of a programme's sentence and of what it brings. */
export const programmes = {
  heading: "Programmes",
  group: (letter: string): string => `Programme ${letter}`,
  show: "Show programme",
  name: ({ everyDays, pulses, againTime, lines, rule }: ProgrammeScene): string =>
    [
      rhythm(everyDays),
      pulses === 1 ? (againTime === "" || rule !== "calendar" ? "one run" : "two runs") : `${pulses} pulses`,
      ...(rule === "calendar" ? [] : [rules[rule]]),
      ...(lines === 0 ? [] : [`${counts[lines]} ${lines === 1 ? "line" : "lines"}`]),
    ].join(", "),
  every: (days: number): string => (days === 1 ? "Every day" : days === 7 ? "Every week" : `Every ${days} days`),
  everyLabel: "Days from run to run",
  pulses: (count: number): string => (count === 1 ? "one run of" : `${count} pulses of`),
  decidedPulses: (count: number): string => (count === 1 ? "in one run" : `in ${count} pulses`),
  pulsesLabel: "Pulses in a run",
  minutes: "min",
  minutesLabel: "Minutes per pulse",
  gap: (minutes: number): string => (minutes === 0 ? "with no gap" : `${minutesText(minutes)} apart`),
  gapLabel: "Pause between pulses",
  from: "from",
  fromLabel: "Time of the first opening",
  through: "through emitters of",
  flowLabel: "Emitter flow",
  flowUnit: (): string => `${unitText("water")}/h`,
  brings: (runLitres: number, hours: number, dayLitres: number): string =>
    `${waterText(runLitres)} a tree in ${durationText(hours)}; ${waterText(dayLitres)} a day`,
  flowing: (emitters: number, flowLPerH: number, m3PerHaDay: number): string =>
    `${amount(emitters)} emitters, ${waterText(flowLPerH)}/h together; ${areaWaterText(m3PerHaDay)} a day.`,
  decides: "The rule decides day by day how much.",
  more: "Rule, second run, lines of its own",
  duplicate: "Duplicate",
  duplicateLabel: (letter: string): string => `Duplicate programme ${letter}`,
  remove: "Remove",
  removeLabel: (letter: string): string => `Remove programme ${letter}`,
};

function rhythm(everyDays: number): string {
  if (everyDays === 1) return "daily";
  return everyDays === 7 ? "weekly" : `every ${everyDays} days`;
}

function durationText(hours: number): string {
  if (hours < 1.5) return `${amount(hours * 60, 2)} min`;
  return `${amount(hours, 2)} h`;
}
