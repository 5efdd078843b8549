import type { Language } from "../text/locale.js";
import type { StructureWord } from "./soil-words.js";

/** All that a person can set; a link carries what differs from the start. */
export interface Scene {
  readonly page: PageName;
  readonly block: BlockScene;
  readonly programmes: readonly ProgrammeScene[];
  readonly soils: readonly SoilScene[];
  /** Every programme brings the same litres over the season. */
  readonly sameLitres: boolean;
  /** Mean over the season, L per tree and day; rules where `sameLitres` holds. */
  readonly litresPerDay: number;
  readonly limits: PumpScene;
  readonly need: NeedScene;
  readonly start: "settled" | "same-state";
  readonly tree: TreeChoice;
  /** Hour since the season's start that the pictures show. */
  readonly hour: number;
  readonly span: Span;
  /** Programme and soil shown where there is room for one. */
  readonly shown: number;
  readonly shownSoil: number;
  /** Tensiometers: how deep, and how far from the tree row, cm. */
  readonly depthsCm: readonly number[];
  readonly sensorAtCm: number;
  readonly readings: readonly Reading[];
  /** Lesson that is open, and the point of its slider. */
  readonly lesson: string;
  readonly point: number;
  readonly language: Language;
  readonly theme: "auto" | "light" | "dark";
  /** Large type, pictures and one number only. */
  readonly wall: boolean;
}

/** A tension that somebody read off an instrument. */
export interface Reading {
  /** Hour of the season. */
  readonly hour: number;
  readonly depthCm: number;
  readonly kPa: number;
}

export const pageNames = ["compare", "block", "section", "sheet", "class", "truth"] as const;
export type PageName = (typeof pageNames)[number];

export const treeChoices = ["mean", "under-fed", "over-fed"] as const;
export type TreeChoice = (typeof treeChoices)[number];

/** Trees, lines and emitters of the block. */
export interface BlockScene {
  readonly treeSpacingM: number;
  readonly rowSpacingM: number;
  readonly canopyDiameterM: number;
  readonly lines: number;
  /** Between neighbouring lines of a row. */
  readonly lineDistanceM: number;
  readonly emitterSpacingM: number;
  /** Emitters of a tree that are plugged, as places in `emitterPlaces`, rising. */
  readonly plugged: readonly number[];
  /** Lines run empty after every closing. */
  readonly drains: boolean;
  /** Roots where the library puts those of a mature tree, or a disc round the trunk of this radius, m. */
  readonly roots: "mature" | "disc";
  readonly rootRadiusM: number;
  readonly rootDepthCm: number;
  /** Radius of the ground that one emitter wets, m, dug or guessed. */
  readonly wettedRadiusM: number;
  /** Trees behind the valve, 0 where unknown, and the smallest flow that pump and filter bear. */
  readonly sectorTrees: number;
  readonly smallestFlowLPerH: number;
  readonly compensating: boolean;
  /** Electrical conductivity of the water, dS/m; 0: salt is not reckoned. */
  readonly waterEcDsPerM: number;
}

export interface ProgrammeScene {
  readonly everyDays: number;
  readonly pulses: number;
  /** Length of one pulse; rules where `sameLitres` does not hold. */
  readonly pulseMinutes: number;
  readonly gapMinutes: number;
  readonly startTime: string;
  /** Second opening of a day, each of the two bringing half of the water; empty for none. */
  readonly againTime: string;
  readonly flowLPerH: number;
  /** Lines of this programme's own, 0 for the block's. */
  readonly lines: number;
  /** What decides: the calendar, or a rule that looks at the state of the soil. */
  readonly rule: RuleName;
  readonly triggerFraction: number;
  readonly triggerKPa: number;
  readonly triggerDepthCm: number;
}

export const ruleNames = ["calendar", "replace-use", "depletion", "tension"] as const;
export type RuleName = (typeof ruleNames)[number];

/** What pump, tariff and rain allow, for every programme. */
export interface PumpScene {
  /** Hours of cheap power, both empty where it costs the same all day. */
  readonly powerFrom: string;
  readonly powerTo: string;
  /** Runs are cut to those hours; otherwise what lies outside is only said. */
  readonly keepToPower: boolean;
  /** No run after a day with at least this much rain, mm; 0: rain is not looked at. */
  readonly skipRainMm: number;
  /** Longest run, minutes; 0: no limit. */
  readonly longestRunMinutes: number;
}

export interface SoilScene {
  readonly texture: string;
  readonly structure: StructureWord;
}

/** What the tree needs, worked out beside the programmes. */
export interface NeedScene {
  /** Typed reference evapotranspiration, mm a day; 0: that of the day shown. */
  readonly et0Mm: number;
  readonly crop: CropName;
  /** Typed crop coefficient; 0: the crop's own. */
  readonly kc: number;
  /** Water used over water applied. */
  readonly efficiencyFraction: number;
}

export const cropNames = ["avocado", "citrus", "blueberry", "strawberry"] as const;
export type CropName = (typeof cropNames)[number];

export const spans = ["3", "14", "season"] as const;
export type Span = (typeof spans)[number];

/** Days that the time axis of the pictures covers, and the first of them. */
export function spanDays(scene: Pick<Scene, "span" | "hour">, seasonDays: number): { firstDay: number; days: number } {
  if (scene.span === "season") return { firstDay: 0, days: seasonDays };
  const days = Math.min(Number(scene.span), seasonDays);
  const page = Math.floor(scene.hour / 24 / days);
  return { firstDay: Math.min(page * days, seasonDays - days), days };
}
