import { html, nothing, type TemplateResult } from "lit";
import { measure } from "rootledger";
import { tensionGauge } from "../../charts/tension-gauge.js";
import type { DemoSoil } from "../../state/demo.js";
import { classWords } from "../../text/class-words.js";
import { tensionText, waterText } from "../../text/quantity.js";
import type { ArmView } from "../arm-pictures.js";
import { cellAt, tensionReader } from "../section/soil-tension.js";
import { lessonFiles, runIndex } from "./lesson-files.js";
import type { ShownLesson } from "./lesson-view.js";

/** Depth at which the class's tensiometer stands, cm. */
const depthCm = 20;

/** What the instrument says beside one tree, and what that tree drinks of what it wants. */
export function instruments(shown: ShownLesson, view: ArmView, column: number): TemplateResult {
  const w = classWords();
  const kPa = tensionOf(shown, view, column);
  const value = (id: string): number => measure(view.result, id).values[view.tree]!;
  const drinks = value("transpiration");
  const wants = value("transpiration-wanted");
  return html`<div class="instruments">${
    kPa === undefined ? nothing : tensionGauge(kPa, tensionText(kPa), w.tensiometerSays(tensionText(kPa), depthCm))
  }<p class="drinks">${w.drinks(waterText(drinks), waterText(wants))}</p><svg class="cup" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true"><rect class="drunk" width=${(drinks / wants) * 100} height="8"></rect><rect class="wanted" x="0.5" y="0.5" width="99" height="7"></rect></svg></div>`;
}

/** Tension at the instrument's depth beside a line; undefined for a soil that is not given by texture. */
function tensionOf({ lesson, file, point, on, hour }: ShownLesson, view: ArmView, column: number): number | undefined {
  const { soil } = lessonFiles(file, lesson)[runIndex(lesson, { point, column, on })]!.file as { soil: DemoSoil };
  if (soil.horizons.some(({ texture }) => texture === undefined)) return undefined;
  const { section, theta, hours } = view.picture;
  const cell = cellAt(section, depthCm, section.lineAtCm[0] ?? 0);
  if (cell === undefined) return undefined;
  const row = Math.min(hour, hours - 1);
  return tensionReader(soil, depthCm)(theta[row * section.layers * section.lanes + cell]!);
}
