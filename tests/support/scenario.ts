import type { Programme } from "rootledger/programme";
import type { Scenario } from "rootledger/scenario";

type Texture = Extract<Scenario["soil"]["horizons"][number], { texture: unknown }>["texture"];

/** What a test may vary; everything else is one plain block. */
export interface Variation {
  readonly days?: number;
  readonly texture?: Texture;
  readonly structure?: "tight" | "ordinary" | "crumbly";
  readonly horizons?: Scenario["soil"]["horizons"];
  readonly programme?: Programme;
  readonly et0Mm?: number;
  readonly rainMm?: readonly number[];
  readonly offsetsM?: readonly number[];
  readonly emitterFlowLPerH?: number;
  readonly pluggedPerTree?: number;
  readonly bottom?: Scenario["soil"]["bottom"];
  readonly start?: Scenario["start"];
  readonly roots?: Partial<Scenario["block"]["tree"]["roots"]>;
  readonly salt?: Scenario["block"]["salt"];
  readonly nitrogen?: Scenario["block"]["nitrogen"];
}

/** A calendar of one kind of run. */
export const calendar = (
  name: string,
  everyDays: number,
  pulses: number,
  litresPerTree: number,
  startH = 6,
  gapMinutes = 60,
): Programme => ({ name, runs: [{ startH, everyDays, firstDay: 0, pulses, gapMinutes, amount: { litresPerTree } }] });

/** One mature block, constant weather. */
export function scenarioWith(variation: Variation = {}): Scenario {
  const days = variation.days ?? 14;
  const column = (value: number): Float64Array => new Float64Array(days).fill(value);
  const rainMm = column(0);
  variation.rainMm?.forEach((mm, d) => {
    if (d < days) rainMm[d] = mm;
  });
  return {
    format: 1,
    name: "test block",
    season: { startDate: "2025-12-01", days },
    block: {
      treeSpacingM: 4,
      rowSpacingM: 6,
      tree: {
        name: "avocado",
        canopyDiameterM: 4.6,
        kcb: [{ date: "2025-12-01", kcb: 0.8 }],
        roots: {
          depthCm: 60,
          topShare: 0.85,
          lateral: { kind: "along-lines", halfWidthCm: 60 },
          compensationOnset: 0.5,
          ...variation.roots,
        },
        limits: {
          pullLimitKPa: 20,
          zeroUptakeKPa: 100,
          airLimitFraction: 0.1,
          airZeroFraction: 0.02,
          airReturnKPa: 5,
        },
      },
      lines: {
        offsetsM: variation.offsetsM ?? [-0.5, 0.5],
        emitterSpacingM: 0.4,
        emitterFlowLPerH: variation.emitterFlowLPerH ?? 1.6,
        pluggedPerTree: variation.pluggedPerTree ?? 0,
        lowQuarterUniformityFraction: 0.85,
      },
      ...(variation.salt === undefined ? {} : { salt: variation.salt }),
      ...(variation.nitrogen === undefined ? {} : { nitrogen: variation.nitrogen }),
    },
    soil: {
      name: variation.texture ?? "loam",
      bottom: variation.bottom ?? { kind: "free-drainage" },
      horizons: variation.horizons ?? [
        { toCm: 100, texture: variation.texture ?? "loam", structure: variation.structure ?? "ordinary" },
      ],
    },
    weather: {
      name: "constant",
      latitudeDeg: -33,
      elevationM: 300,
      windHeightM: 2,
      et0Method: "given",
      rainIntensityMmPerH: 5,
      startDate: "2025-12-01",
      days,
      et0Mm: column(variation.et0Mm ?? 6),
      rainMm,
      sunriseH: column(5),
      sunsetH: column(19),
    },
    programme: variation.programme ?? calendar("daily", 1, 1, 110),
    start: variation.start ?? { tensionKPa: 10, kind: "same-state" },
  };
}
