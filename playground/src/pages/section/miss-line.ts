import { html, nothing, type TemplateResult } from "lit";
import type { Trace } from "../../charts/trace-chart.js";
import type { Reading } from "../../state/scene.js";
import { amount } from "../../text/number-format.js";
import { sensorWords } from "../../text/sensor-words.js";

/** Wetter than this a tensiometer tells nothing apart, kPa; common practice, no source. */
const wettestKPa = 0.5;

/** How far the lines are from a logger's readings in the days shown, as a factor at the middle reading; nothing without any. */
export function missLine(
  logged: readonly Reading[],
  traces: readonly Trace[],
  firstDay: number,
): TemplateResult | typeof nothing {
  const factors = logged
    .flatMap(({ hour, depthCm, kPa }) => {
      const trace = traces.find((of) => of.depthCm === depthCm);
      const model = trace?.kPa[Math.floor(hour - firstDay * 24)];
      if (model === undefined || Number.isNaN(model)) return [];
      const ratio = Math.max(wettestKPa, model) / Math.max(wettestKPa, kPa);
      return [Math.max(ratio, 1 / ratio)];
    })
    .sort((a, b) => a - b);
  const middle = factors[Math.floor(factors.length / 2)];
  return middle === undefined
    ? nothing
    : html`<p class="small">${sensorWords().miss(amount(middle, 2), factors.length)}</p>`;
}
