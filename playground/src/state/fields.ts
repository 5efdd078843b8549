import { limits } from "../fields/limits.js";
import { languages } from "../text/locale.js";
import {
  type Codec,
  clockOrNone,
  clockTime,
  numberBetween,
  oneOf,
  placesBelow,
  shortName,
  wholeBetween,
  yesOrNo,
} from "./codec.js";
import { readingsWithin } from "./readings-codec.js";
import {
  type BlockScene,
  cropNames,
  type NeedScene,
  type ProgrammeScene,
  type PumpScene,
  pageNames,
  ruleNames,
  type Scene,
  type SoilScene,
  spans,
  treeChoices,
} from "./scene.js";
import { withBlock, withProgramme, withSoil } from "./scene-edits.js";
import { structureWords, textures } from "./soil-words.js";

/** One entry of a link: its key, how it is checked, and where it lives in the scene. */
export interface Field {
  readonly key: string;
  readonly rule: string;
  readonly textOf: (scene: Scene) => string;
  /** The scene with this field set, or undefined if the text is not acceptable. */
  readonly readInto: (scene: Scene, text: string) => Scene | undefined;
}

const letters = ["a", "b", "c", "d"] as const;

/** The table of everything a link may hold, for a scene of this shape. @example fieldsOf(initial, 126) */
export function fieldsOf(initial: Scene, seasonDays: number): readonly Field[] {
  return [
    field(
      "page",
      oneOf(pageNames),
      (s) => s.page,
      (s, page) => ({ ...s, page }),
    ),
    ...blockFields(),
    // Before the programmes' own fields: those of one that is not there yet would find no place.
    field(
      "programmes",
      wholeBetween(...limits.programmes),
      (s) => s.programmes.length,
      (s, count) => ({
        ...s,
        programmes: letters.slice(0, count).map((_, i) => s.programmes[i] ?? started(initial, i)),
      }),
    ),
    ...letters.flatMap((_, i) => programmeFields(initial, i)),
    ...initial.soils.flatMap((_, i) => soilFields(i)),
    field(
      "same",
      yesOrNo,
      (s) => s.sameLitres,
      (s, sameLitres) => ({ ...s, sameLitres }),
    ),
    field(
      "litres",
      numberBetween(...limits.litresPerDay),
      (s) => s.litresPerDay,
      (s, litresPerDay) => ({ ...s, litresPerDay }),
    ),
    ...limitFields(),
    ...needFields(),
    field(
      "start",
      oneOf<Scene["start"]>(["settled", "same-state"]),
      (s) => s.start,
      (s, start) => ({ ...s, start }),
    ),
    field(
      "tree",
      oneOf(treeChoices),
      (s) => s.tree,
      (s, tree) => ({ ...s, tree }),
    ),
    field(
      "hour",
      wholeBetween(0, seasonDays * 24 - 1),
      (s) => s.hour,
      (s, hour) => ({ ...s, hour }),
    ),
    field(
      "span",
      oneOf(spans),
      (s) => s.span,
      (s, span) => ({ ...s, span }),
    ),
    field(
      "shown",
      wholeBetween(0, letters.length - 1),
      (s) => s.shown,
      (s, shown) => (shown < s.programmes.length ? { ...s, shown } : undefined),
    ),
    field(
      "soil",
      wholeBetween(0, initial.soils.length - 1),
      (s) => s.shownSoil,
      (s, shownSoil) => ({ ...s, shownSoil }),
    ),
    field(
      "depths",
      placesBelow(limits.sensorDepthCm),
      (s) => s.depthsCm,
      (s, depthsCm) => ({ ...s, depthsCm }),
    ),
    field(
      "sensor",
      wholeBetween(...limits.sensorAtCm),
      (s) => s.sensorAtCm,
      (s, sensorAtCm) => ({ ...s, sensorAtCm }),
    ),
    field(
      "readings",
      readingsWithin(seasonDays * 24, limits.sensorDepthCm, limits.readingKPa),
      (s) => s.readings,
      (s, readings) => ({ ...s, readings }),
    ),
    field(
      "lesson",
      shortName,
      (s) => s.lesson,
      (s, lesson) => ({ ...s, lesson }),
    ),
    field(
      "point",
      wholeBetween(0, 30),
      (s) => s.point,
      (s, point) => ({ ...s, point }),
    ),
    field(
      "lang",
      oneOf(languages),
      (s) => s.language,
      (s, language) => ({ ...s, language }),
    ),
    field(
      "theme",
      oneOf<Scene["theme"]>(["auto", "light", "dark"]),
      (s) => s.theme,
      (s, theme) => ({ ...s, theme }),
    ),
    field(
      "wall",
      yesOrNo,
      (s) => s.wall,
      (s, wall) => ({ ...s, wall }),
    ),
  ];
}

function blockFields(): Field[] {
  const part = <K extends keyof BlockScene>(name: string, k: K, codec: Codec<BlockScene[K]>) =>
    field(
      name,
      codec,
      (s) => s.block[k],
      (s, value) => withBlock(s, { [k]: value }),
    );
  return [
    part("trees", "treeSpacingM", numberBetween(...limits.treeSpacingM)),
    part("rows", "rowSpacingM", numberBetween(...limits.rowSpacingM)),
    part("canopy", "canopyDiameterM", numberBetween(...limits.canopyDiameterM)),
    part("lines", "lines", wholeBetween(...limits.lines)),
    part("line.distance", "lineDistanceM", numberBetween(...limits.lineDistanceM)),
    part("emitters", "emitterSpacingM", numberBetween(...limits.emitterSpacingM)),
    part("plugged", "plugged", placesBelow(limits.emittersPerTree)),
    part("drain", "drains", yesOrNo),
    part("roots", "roots", oneOf<BlockScene["roots"]>(["mature", "disc"])),
    part("root.radius", "rootRadiusM", numberBetween(...limits.rootRadiusM)),
    part("root.depth", "rootDepthCm", numberBetween(...limits.rootDepthCm)),
    part("wet", "wettedRadiusM", numberBetween(...limits.wettedRadiusM)),
    part("sector", "sectorTrees", wholeBetween(...limits.sectorTrees)),
    part("least.flow", "smallestFlowLPerH", numberBetween(...limits.smallestFlowLPerH)),
    part("compensating", "compensating", yesOrNo),
    part("water.ec", "waterEcDsPerM", numberBetween(...limits.waterEcDsPerM)),
  ];
}

function limitFields(): Field[] {
  const part = <K extends keyof PumpScene>(name: string, k: K, codec: Codec<PumpScene[K]>) =>
    field(
      name,
      codec,
      (s) => s.limits[k],
      (s, value) => ({ ...s, limits: { ...s.limits, [k]: value } }),
    );
  return [
    part("power.from", "powerFrom", clockOrNone),
    part("power.to", "powerTo", clockOrNone),
    part("power.keep", "keepToPower", yesOrNo),
    part("skip.rain", "skipRainMm", numberBetween(...limits.skipRainMm)),
    part("longest", "longestRunMinutes", wholeBetween(...limits.longestRunMinutes)),
  ];
}

function needFields(): Field[] {
  const part = <K extends keyof NeedScene>(name: string, k: K, codec: Codec<NeedScene[K]>) =>
    field(
      name,
      codec,
      (s) => s.need[k],
      (s, value) => ({ ...s, need: { ...s.need, [k]: value } }),
    );
  return [
    part("need.et0", "et0Mm", numberBetween(...limits.et0Mm)),
    part("need.crop", "crop", oneOf(cropNames)),
    part("need.kc", "kc", numberBetween(...limits.kc)),
    part("need.efficiency", "efficiencyFraction", numberBetween(...limits.efficiencyFraction)),
  ];
}

/** How a programme begins that the link adds: as the demo's of that place, or its last one. */
const started = (initial: Scene, i: number): ProgrammeScene => initial.programmes[i] ?? initial.programmes.at(-1)!;

function programmeFields(initial: Scene, i: number): Field[] {
  const key = (name: string) => `${letters[i]}.${name}`;
  const of = (scene: Scene): ProgrammeScene => scene.programmes[i] ?? started(initial, i);
  const part = <K extends keyof ProgrammeScene>(name: string, k: K, codec: Codec<ProgrammeScene[K]>) =>
    field(
      key(name),
      codec,
      (s) => of(s)[k],
      (s, value) => withProgramme(s, i, { [k]: value }),
    );
  return [
    part("every", "everyDays", wholeBetween(...limits.everyDays)),
    part("pulses", "pulses", wholeBetween(...limits.pulses)),
    part("minutes", "pulseMinutes", numberBetween(...limits.pulseMinutes)),
    part("gap", "gapMinutes", wholeBetween(...limits.gapMinutes)),
    part("from", "startTime", clockTime),
    part("again", "againTime", clockOrNone),
    part("lines", "lines", wholeBetween(...limits.ownLines)),
    part("rule", "rule", oneOf(ruleNames)),
    part("trigger", "triggerFraction", numberBetween(...limits.triggerFraction)),
    part("trigger.kpa", "triggerKPa", numberBetween(...limits.triggerKPa)),
    part("trigger.depth", "triggerDepthCm", wholeBetween(...limits.triggerDepthCm)),
    part("flow", "flowLPerH", numberBetween(...limits.flowLPerH)),
  ];
}

function soilFields(i: number): Field[] {
  const part = <K extends keyof SoilScene>(name: string, k: K, codec: Codec<SoilScene[K]>) =>
    field(
      `soil${i + 1}${name}`,
      codec,
      (s) => s.soils[i]![k],
      (s, value) => withSoil(s, i, { [k]: value }),
    );
  return [part("", "texture", oneOf(textures)), part(".structure", "structure", oneOf(structureWords))];
}

function field<T>(
  key: string,
  codec: Codec<T>,
  get: (s: Scene) => T,
  set: (s: Scene, value: T) => Scene | undefined,
): Field {
  return {
    key,
    rule: codec.rule,
    textOf: (scene) => codec.write(get(scene)),
    readInto: (scene, text) => {
      const value = codec.read(text);
      return value === undefined ? undefined : set(scene, value);
    },
  };
}
