import type { DemoFile, DemoSoil } from "./demo.js";
import { programmeFile } from "./programme-file.js";
import type { Scene, SoilScene } from "./scene.js";

/** Names under which programmes and soils appear in the result. */
export interface ArmNames {
  readonly programmes: readonly string[];
  readonly soils: readonly string[];
}

/** Days of the season to compute instead of all of it, on the same calendar; they begin unsettled. */
export interface Excerpt {
  readonly firstDay: number;
  readonly days: number;
}

/** The comparison file that a scene stands for, as the library reads it. */
export function comparisonFile(file: DemoFile, scene: Scene, names: ArmNames, excerpt?: Excerpt): object {
  const fromDay = excerpt?.firstDay ?? 0;
  const { season } = file;
  return {
    ...file,
    season: { startDate: datePlus(season.startDate, fromDay), days: excerpt?.days ?? season.days },
    soils: scene.soils.map((soil, i) => soilFile(file.soils[i]!, soil, names.soils[i]!)),
    programmes: scene.programmes.map((_, i) => programmeFile(file, scene, i, names.programmes[i]!, fromDay)),
    start: { ...file.start, kind: excerpt ? "same-state" : scene.start },
  };
}

/** The file's own soil with another structure, or one layer of another texture as deep as it. */
export function soilFile(original: DemoSoil, { texture, structure }: SoilScene, name: string): DemoSoil {
  if (original.horizons[0]!.texture === texture) {
    return { name, horizons: original.horizons.map((horizon) => ({ ...horizon, structure })) };
  }
  return { name, horizons: [{ toCm: original.horizons.at(-1)!.toCm, texture, structure }] };
}

/** @example datePlus("2023-12-30", 3) // "2024-01-02" */
function datePlus(isoDate: string, days: number): string {
  const at = new Date(`${isoDate}T00:00:00Z`);
  at.setUTCDate(at.getUTCDate() + days);
  return at.toISOString().slice(0, 10);
}
