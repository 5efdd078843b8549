import { cutCounts, type WateringBook } from "rootledger/programme";
import { words } from "../words.js";
import { cutWords } from "./cut-words.js";

/** What a programme asked for, what it was given and why not all. @example wateringText(result.watering) */
export function wateringText({ askedRuns, givenRuns, askedMinutes, givenMinutes, cuts }: WateringBook): string {
  const hours = (minutes: number): string => `${(minutes / 60).toFixed(1)} h`;
  const counts = cutCounts(cuts).map(
    ({ reason, runs, minutes }) => `${cutWords[reason]} ${runs} x (${hours(minutes)})`,
  );
  const cut = counts.length === 0 ? words.nothingCut : `${words.cut}: ${counts.join(", ")}`;
  return `${words.askedFor} ${askedRuns} ${words.runs}, ${hours(askedMinutes)}; ${words.given} ${givenRuns} ${words.runs}, ${hours(givenMinutes)}; ${cut}`;
}
