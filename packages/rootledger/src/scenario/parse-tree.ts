import type { CropPreset } from "../tree/crop-preset.js";
import { presetStages } from "../tree/crop-preset.js";
import type { KcStage } from "../tree/kc-by-stage.js";
import { type Phenology, phenologyOfOtherHemisphere, type StageStart } from "../tree/stages.js";
import type { DefaultUsed } from "../water/result.js";
import { cropDefaults, presetDefault, presetOf } from "./crop-defaults.js";
import { pick } from "./parse-default.js";
import type { TreeFile } from "./schema-block.js";
import type { CropFile, ModifiersFile, StageFile } from "./schema-crop.js";
import type { TreeDemand } from "./tree-days.js";
import type { TreeModifiers } from "./tree-modifiers.js";

/**
 * The demand of a checked tree with every choice made and listed; undefined for Kcb by date alone, which needs none of it.
 */
export function filledDemand(
  file: TreeFile,
  path: string,
  latitudeDeg: number,
  used: DefaultUsed[],
): TreeDemand | undefined {
  const { crop, growth, modifiers } = file;
  const preset = presetOf(crop?.preset);
  const asked = [crop, growth, modifiers, file.climateAdjustment, file.cover];
  if (asked.every((part) => part === undefined)) return undefined;
  const { climateOfPreset, climateOfOwn, coverOfPreset, coverOfOwn, coefficient } = cropDefaults;
  const which = crop === undefined ? "dual" : pick(used, `${path}.crop.coefficient`, crop.coefficient, coefficient);
  const climate = preset === undefined ? climateOfOwn : climateOfPreset;
  const cover = preset === undefined ? coverOfOwn : coverOfPreset;
  return {
    coefficient:
      crop === undefined
        ? { kind: "by-date", points: file.kcb ?? [] }
        : { kind: "by-stage", ...filledStages(crop, which, `${path}.crop`, latitudeDeg, used) },
    evaporation: which === "single" ? "inside" : "apart",
    climate: pick<TreeDemand["climate"]>(used, `${path}.climateAdjustment`, file.climateAdjustment, climate),
    heightM: pick(used, `${path}.heightM`, file.heightM, heightDefault(preset)),
    cover:
      file.cover ??
      ({ rule: pick<"relative-density" | "whole-ground">(used, `${path}.cover.rule`, undefined, cover) } as const),
    ...(growth === undefined
      ? {}
      : { growth: { ageYears: growth.ageYears, canopy: growth.canopy ?? canopyOf(preset, path, used) } }),
    modifiers: filledModifiers(modifiers ?? {}, `${path}.modifiers`, phenologyOf(crop, latitudeDeg), used),
  };
}

const heightDefault = (preset: CropPreset | undefined) =>
  preset === undefined ? cropDefaults.heightM : presetDefault(preset.name, preset.heightM);

function canopyOf(preset: CropPreset | undefined, path: string, used: DefaultUsed[]): CropPreset["canopy"] {
  const canopy = preset?.canopy ?? [];
  const value = canopy.map(({ ageYears, diameterM }) => `${ageYears} years ${diameterM} m`).join(", ");
  used.push({ path: `${path}.growth.canopy`, value, source: preset?.canopySource ?? "" });
  return canopy;
}

/** Stages of a preset or the file's own, with their events, as Kcb or Kc. */
export function filledStages(
  crop: CropFile,
  which: "dual" | "single",
  path: string,
  latitudeDeg: number,
  used: DefaultUsed[],
): { readonly stages: readonly KcStage[]; readonly phenology: Phenology } {
  const phenology = phenologyOf(crop, latitudeDeg);
  const preset = presetOf(crop.preset);
  if (preset === undefined) return { stages: (crop.stages ?? []).map(stageOf), phenology };
  const kind = which === "dual" ? "kcb" : "kc";
  for (const [name, { value, source }] of Object.entries(preset[kind])) {
    used.push({ path: `${path}.preset ${preset.name}, ${kind} ${name}`, value: String(value), source });
  }
  const given = crop.phenology ?? {};
  const days = Object.entries(phenology).filter(([event]) => !Object.hasOwn(given, event));
  if (days.length > 0) {
    const shifted = hemisphereOf(crop, latitudeDeg) === "south" ? "; moved six months" : "";
    const value = days.map(([event, day]) => `${event} ${day}`).join(", ");
    used.push({ path: `${path}.phenology`, value, source: `${preset.phenologySource}${shifted}` });
  }
  return { stages: presetStages(preset, kind), phenology };
}

/** Days of the events: the preset's, in this hemisphere, and over them those of the file. */
export function phenologyOf(crop: CropFile | undefined, latitudeDeg: number): Phenology {
  const north = presetOf(crop?.preset)?.phenologyNorth ?? {};
  const usual = hemisphereOf(crop, latitudeDeg) === "south" ? phenologyOfOtherHemisphere(north) : north;
  return { ...usual, ...crop?.phenology };
}

const hemisphereOf = (crop: CropFile | undefined, latitudeDeg: number): "north" | "south" =>
  crop?.hemisphere ?? (latitudeDeg < 0 ? "south" : "north");

/** A stage of the file. @example stageOf({ name: "fruit", starts: "day 0", from: 0.8 }).kcTo // 0.8 */
export const stageOf = ({ name, starts, from, to }: StageFile): KcStage => ({
  name,
  starts: startOf(starts),
  kcFrom: from,
  kcTo: to ?? from,
});

function startOf(text: string): StageStart {
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return { date: text };
  if (/^\d{2}-\d{2}$/.test(text)) return { monthDay: text };
  const [, day] = /^day (\d{1,5})$/.exec(text) ?? [];
  return day === undefined ? { event: text } : { day: Number(day) };
}

function filledModifiers(file: ModifiersFile, path: string, phenology: Phenology, used: DefaultUsed[]): TreeModifiers {
  const { leafLoss, heat, flowering } = file;
  const { leafAreaIndex, heatLimitC, heatClosedC, heatClosedFraction } = cropDefaults;
  return {
    ...(leafLoss === undefined
      ? {}
      : {
          leafLoss: {
            date: leafLoss.date,
            leavesLeftFraction: leafLoss.leavesLeftFraction,
            leafAreaIndex: pick(used, `${path}.leafLoss.leafAreaIndex`, leafLoss.leafAreaIndex, leafAreaIndex),
            ...(leafLoss.recoveredBy === undefined ? {} : { recoveredBy: leafLoss.recoveredBy }),
          },
        }),
    ...(heat === undefined
      ? {}
      : {
          heat: {
            limitC: pick(used, `${path}.heat.limitC`, heat.limitC, heatLimitC),
            closedC: pick(used, `${path}.heat.closedC`, heat.closedC, heatClosedC),
            closedFraction: pick(used, `${path}.heat.closedFraction`, heat.closedFraction, heatClosedFraction),
          },
        }),
    ...(flowering === undefined
      ? {}
      : {
          flowering: {
            starts: flowering.starts ?? phenology.bloom ?? "",
            days: flowering.days,
            increaseFraction: flowering.increaseFraction,
          },
        }),
  };
}
