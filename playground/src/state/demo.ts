import comparisonText from "../../../data/demo/comparison.json?raw";
import { blockScene } from "./block-file.js";
import type { BlockScene, ProgrammeScene, Scene, SoilScene } from "./scene.js";
import type { StructureWord } from "./soil-words.js";

/** The parts of the demo's comparison file that the controls start from. The model reads and checks the whole file. */
export interface DemoFile {
  readonly name: string;
  readonly remark: string;
  readonly season: { readonly startDate: string; readonly days: number };
  readonly block: DemoBlock;
  readonly weather: {
    readonly name: string;
    readonly file: string;
    readonly latitudeDeg: number;
    readonly elevationM: number;
    readonly et0Method?: string;
  };
  readonly soils: readonly DemoSoil[];
  readonly programmes: readonly DemoProgramme[];
  readonly start?: { readonly tensionKPa?: number; readonly kind?: Scene["start"] };
}

export interface DemoBlock {
  readonly treeSpacingM: number;
  readonly rowSpacingM: number;
  readonly tree: {
    readonly name: string;
    readonly canopyDiameterM: number;
    readonly cover?: { readonly rule: "relative-density" };
    readonly kcb: readonly { readonly date: string; readonly kcb: number }[];
    readonly roots?: object;
  };
  readonly lines: {
    readonly offsetsM: readonly number[];
    readonly emitterSpacingM: number;
    readonly emitterFlowLPerH: number;
    readonly pluggedPerTree?: number;
    readonly drainOut?: object;
  };
  readonly salt?: object;
}

export interface DemoSoil {
  readonly name: string;
  readonly horizons: readonly {
    readonly toCm: number;
    readonly texture?: string;
    readonly structure?: StructureWord;
  }[];
}

export interface DemoProgramme {
  readonly name: string;
  readonly emitterFlowLPerH?: number;
  readonly runs: readonly DemoRun[];
}

interface DemoRun {
  readonly start: string;
  readonly everyDays: number;
  readonly firstDay?: number;
  readonly pulses?: number;
  readonly gapMinutes?: number;
  readonly minutes?: number;
  readonly litresPerTree?: number;
}

export const demo: DemoFile = JSON.parse(comparisonText);

/** Pause offered when a run is first split; common practice, no source. */
const firstGapMinutes = 60;

/** Opens in the heat wave of the invented season, while the weekly run is near its end and the daily ones have begun. */
const openingHour = 43 * 24 + 8;

/** A calendar through the block's lines; the triggers are offered when a rule is first chosen: common practice, no source. */
const plainProgramme = {
  againTime: "",
  lines: 0,
  rule: "calendar",
  triggerFraction: 0.2,
  triggerKPa: 15,
  triggerDepthCm: 25,
} as const satisfies Partial<ProgrammeScene>;

const noLimits: Scene["limits"] = {
  powerFrom: "",
  powerTo: "",
  keepToPower: false,
  skipRainMm: 0,
  longestRunMinutes: 0,
};

/** The scene that shows the demo unchanged. */
export function initialScene(
  file: DemoFile,
  treeFlow: (flowLPerH: number) => number,
  roots: Pick<BlockScene, "rootRadiusM" | "rootDepthCm">,
): Scene {
  const lineFlow = file.block.lines.emitterFlowLPerH;
  const programmes = file.programmes.map((p): ProgrammeScene => {
    const run = p.runs[0]!;
    const flowLPerH = p.emitterFlowLPerH ?? lineFlow;
    const pulses = run.pulses ?? 1;
    const minutes = run.minutes ?? ((run.litresPerTree ?? 0) / treeFlow(flowLPerH)) * 60;
    return {
      everyDays: run.everyDays,
      pulses,
      pulseMinutes: minutes / pulses,
      gapMinutes: run.gapMinutes ?? firstGapMinutes,
      startTime: run.start,
      flowLPerH,
      ...plainProgramme,
    };
  });
  const first = programmes[0]!;
  const runLitres = (treeFlow(first.flowLPerH) * first.pulses * first.pulseMinutes) / 60;
  const runs = Math.ceil((file.season.days - firstDayOf(file, 0)) / first.everyDays);
  return {
    page: "compare",
    block: blockScene(file.block, roots),
    programmes,
    soils: file.soils.map(soilScene),
    sameLitres: true,
    litresPerDay: Math.round((runLitres * runs * 1000) / file.season.days) / 1000,
    limits: noLimits,
    need: { et0Mm: 0, crop: "avocado", kc: 0, efficiencyFraction: 0.9 },
    start: file.start?.kind ?? "settled",
    tree: "mean",
    hour: Math.min(openingHour, file.season.days * 24 - 1),
    span: "14",
    shown: 0,
    shownSoil: 0,
    depthsCm: [20, 50],
    sensorAtCm: Math.round(Math.abs(file.block.lines.offsetsM[0] ?? 0) * 100),
    readings: [],
    lesson: "wilting-tree",
    point: 0,
    language: "en",
    theme: "auto",
    wall: false,
  };
}

export const firstDayOf = (file: DemoFile, i: number): number => file.programmes[i]?.runs[0]?.firstDay ?? 0;

function soilScene(soil: DemoSoil): SoilScene {
  const top = soil.horizons[0]!;
  return { texture: top.texture ?? "loam", structure: top.structure ?? "ordinary" };
}
