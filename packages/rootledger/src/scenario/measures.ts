import { openHours } from "../programme/valve-events.js";
import { cm3PerL, mmPerCm } from "../units.js";
import type { Measure, Window } from "../water/result.js";
import { ledgerPlaces, ledgerSize } from "./hour-ledger.js";
import type { Progress } from "./simulation.js";

/** Share of the roots that must be thirsty or airless for an hour to count in the longest spell. Our choice, no source. */
export const spellShare = 0.25;

/**
 * The measures, fixed before any run. Root-hours are hours weighted by the share of roots concerned; severity is hours
 * times what the local factor lacks of 1. A spell is an unbroken stretch with at least a quarter of the roots concerned.
 */
export function measuresOf(now: Progress, window: Window): Measure[] {
  const { prepared, trees, startCm3, storedCm3 } = now;
  const count = trees.length;
  const groundCm2 = prepared.groundCm2;
  const perTree = (id: string, unit: string, of: (t: number) => number): Measure => ({
    id,
    unit,
    values: Float64Array.from(trees, (_, t) => of(t)),
  });
  const booked = (place: number) => (t: number) => now.ledger[t * ledgerSize + place];
  const litres = (place: number) => (t: number) => booked(place)(t) / cm3PerL;
  const daySum = (values: Float64Array) => (t: number) => {
    let sum = 0;
    for (let row = t; row < values.length; row += count) sum += values[row];
    return sum;
  };
  const d = now.days.at;
  const applied = litres(ledgerPlaces.emitter);
  const belowRoots = daySum(d.belowRoots);
  const cameIn = (t: number) => litres(ledgerPlaces.emitter)(t) + litres(ledgerPlaces.rain)(t);
  const toMm = (l: number) => ((l * cm3PerL) / groundCm2) * mmPerCm;
  const ratio = (a: number, b: number) => (b > 0 ? a / b : 0);
  return [
    perTree("applied", "L", applied),
    perTree("applied-depth", "mm", (t) => toMm(applied(t))),
    perTree("applied-area", "m3/ha", (t) => toMm(applied(t)) * 10),
    perTree("applied-at-valve", "L", () => openHours(now.valve.valveH, 0, now.hour) * prepared.treeFlowLPerH),
    perTree("transpiration-wanted", "L", daySum(d.wanted)),
    perTree("transpiration", "L", litres(ledgerPlaces.transpiration)),
    perTree("transpiration-ratio", "fraction", (t) =>
      ratio(litres(ledgerPlaces.transpiration)(t), daySum(d.wanted)(t)),
    ),
    perTree("thirsty", "root-h", daySum(d.thirsty)),
    perTree("fine", "root-h", daySum(d.fine)),
    perTree("airless", "root-h", daySum(d.airless)),
    perTree("thirsty-severity", "root-h", daySum(d.thirstySeverity)),
    perTree("airless-severity", "root-h", daySum(d.airlessSeverity)),
    perTree("longest-thirsty", "h", (t) => longestSpell(now.hours.at.thirstyShare, count, t, now.hour)),
    perTree("longest-airless", "h", (t) => longestSpell(now.hours.at.airlessShare, count, t, now.hour)),
    perTree("below-roots", "L", belowRoots),
    perTree("below-roots-depth", "mm", (t) => toMm(belowRoots(t))),
    perTree("below-roots-share", "fraction", (t) => ratio(belowRoots(t), cameIn(t))),
    perTree("evaporation", "L", litres(ledgerPlaces.evaporation)),
    perTree("runoff", "L", litres(ledgerPlaces.runoff)),
    perTree("window-low-point", "fraction", (t) => lowPoint(now, window, t)),
    perTree("pump-starts", "count", () => startsBefore(now.valve.valveH, now.hour)),
    perTree("storage-change", "L", (t) => (storedCm3[t] - startCm3[t]) / cm3PerL),
  ];
}

function longestSpell(share: Float64Array, count: number, t: number, hours: number): number {
  let longest = 0;
  let current = 0;
  for (let hour = 0; hour < hours; hour++) {
    current = share[hour * count + t] >= spellShare ? current + 1 : 0;
    if (current > longest) longest = current;
  }
  return longest;
}

/** Lowest root-zone water of any hour, as a fraction of the window: 1 at air-return, 0 at the pull limit, negative beyond. */
function lowPoint(now: Progress, window: Window, t: number): number {
  const water = now.hours.at.rootZoneWater;
  const count = now.trees.length;
  let low = Number.POSITIVE_INFINITY;
  for (let hour = 0; hour < now.hour; hour++) if (water[hour * count + t] < low) low = water[hour * count + t];
  return (low - window.waterAtPullLimitMm) / (window.waterAtAirReturnMm - window.waterAtPullLimitMm);
}

function startsBefore(valveH: Float64Array, hour: number): number {
  let starts = 0;
  for (let e = 0; e < valveH.length; e += 2) if (valveH[e] < hour) starts++;
  return starts;
}
