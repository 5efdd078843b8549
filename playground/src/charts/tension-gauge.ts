import { html, svg, type TemplateResult } from "lit";

/** End of the scale, kPa: a tensiometer loses its water column beyond about 80 (usual working range 0-80 kPa). */
const fullKPa = 80;
const ticksKPa = [0, 20, 40, 60, 80];

/** The dial of a tensiometer; beyond its scale the hand rests at the end. */
export function tensionGauge(kPa: number, said: string, label: string): TemplateResult {
  const turn = (value: number): number => Math.PI * (1 - Math.min(fullKPa, Math.max(0, value)) / fullKPa);
  const at = (value: number, reach: number): string =>
    `${80 + Math.cos(turn(value)) * reach} ${80 - Math.sin(turn(value)) * reach}`;
  return html`<svg class="gauge" viewBox="0 0 160 112" role="img" aria-label=${label}>
    <path class="dial" d="M${at(0, 66)}A66 66 0 0 1 ${at(fullKPa, 66)}"></path>
    ${ticksKPa.map((v) => {
      const [x, y] = at(v, 48).split(" ");
      return svg`<path class="dial" d="M${at(v, 60)}L${at(v, 66)}"></path><text x=${x!} y=${Number(y) + 4} text-anchor="middle">${v}</text>`;
    })}
    <path class="hand" d="M80 80L${at(kPa, 58)}"></path><circle class="hub" cx="80" cy="80" r="5"></circle>
    <text class="said" x="80" y="107" text-anchor="middle">${said}</text>
  </svg>`;
}
