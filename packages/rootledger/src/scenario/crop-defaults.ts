import type { CropPreset } from "../tree/crop-preset.js";
import { cropPresets } from "../tree/crop-presets.js";
import { avocadoHeatLimit } from "../tree/demand-modifiers.js";
import type { Disputed } from "../tree/sourced.js";
import { type Default, defaults } from "./defaults.js";

const ownChoice = "our choice; no published value";
const heatSource =
  "a California growers' commission and UC Cooperative Extension (2020): stomata of avocado close above 31 C";

/** What `block.tree` may leave out about its crop. */
export const cropDefaults: {
  readonly coefficient: Default<"dual">;
  readonly climateOfPreset: Default<"full">;
  readonly climateOfOwn: Default<"none">;
  readonly coverOfPreset: Default<"relative-density">;
  readonly coverOfOwn: Default<"whole-ground">;
  readonly heightM: Default<number>;
  readonly leafAreaIndex: Default<number>;
  readonly heatLimitC: Default<number>;
  readonly heatClosedC: Default<number>;
  readonly heatClosedFraction: Default<number>;
} = {
  coefficient: {
    value: "dual",
    source: "Allen et al. (1998), FAO-56 ch. 7: for wettings as frequent as under drip",
    published: "single, dual",
  },
  climateOfPreset: {
    value: "full",
    source: "Allen et al. (1998), FAO-56 eqs 62, 65, 70 and 72: coefficients follow wind and RHmin",
    published: "none",
  },
  climateOfOwn: {
    value: "none",
    source: `${ownChoice}: coefficients that the file gives are taken as they stand, Kc max is 1.2`,
    published: "Allen et al. (1998), FAO-56 eqs 62, 65, 70 and 72",
  },
  coverOfPreset: {
    value: "relative-density",
    source: "Allen et al. (1998), FAO-56 eq. 98: density of this canopy over that of the table's mature orchard",
    published: "seven rules; see the need file",
  },
  coverOfOwn: {
    value: "whole-ground",
    source: "Allen et al. (1998), FAO-56: Kc of a mature orchard is of the whole ground",
    published: "none",
  },
  heightM: { value: 3, source: "Allen et al. (1998), FAO-56 table 12, avocado", published: "0.1-10 m" },
  leafAreaIndex: { value: 3, source: ownChoice, published: "none" },
  heatLimitC: { value: avocadoHeatLimit.limitC, source: heatSource, published: "none" },
  heatClosedC: { value: avocadoHeatLimit.closedC, source: ownChoice, published: "none" },
  heatClosedFraction: { value: avocadoHeatLimit.closedFraction, source: ownChoice, published: "none" },
};

export type PresetName = keyof typeof cropPresets;

export const presetNames: readonly PresetName[] = ["avocado", "citrus", "blueberry", "strawberry"];

/** The preset of a label; undefined for none. @example presetOf("citrus")?.name // "citrus" */
export const presetOf = (name: unknown): CropPreset | undefined => {
  const known = presetNames.find((preset) => preset === name);
  return known === undefined ? undefined : cropPresets[known];
};

/** A number of a preset as a default, with what others say of it. */
export const presetDefault = (of: string, { value, source, others }: Disputed): Default<number> => ({
  value,
  source: `${of}: ${source}`,
  published: others.length === 0 ? "none" : others.map((other) => `${other.value} (${other.source})`).join("; "),
});

export type RootDefaults = Pick<
  typeof defaults,
  "rootDepthCm" | "topShare" | "pullLimitKPa" | "zeroUptakeKPa" | "airLimitFraction" | "airReturnKPa"
>;

/** Defaults of roots and limits: those of the crop's preset, else those of the file format. */
export function rootDefaults(preset: CropPreset | undefined): RootDefaults {
  const { rootDepthCm, topShare, pullLimitKPa, zeroUptakeKPa, airLimitFraction, airReturnKPa } = defaults;
  const usual = { rootDepthCm, topShare, pullLimitKPa, zeroUptakeKPa, airLimitFraction, airReturnKPa };
  if (preset === undefined) return usual;
  const of = (field: keyof typeof usual): Default<number> => presetDefault(preset.name, preset[field]);
  return {
    rootDepthCm: of("rootDepthCm"),
    topShare: of("topShare"),
    pullLimitKPa: of("pullLimitKPa"),
    zeroUptakeKPa: of("zeroUptakeKPa"),
    airLimitFraction: of("airLimitFraction"),
    airReturnKPa: of("airReturnKPa"),
  };
}
