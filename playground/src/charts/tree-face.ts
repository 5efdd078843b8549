import { html, svg, type TemplateResult } from "lit";

/** A wilting tree as seen from the road, its soil hidden; the same whatever ails it. */
export function treeFace(label: string): TemplateResult {
  const leaves = Array.from({ length: 26 }, (_, i) => {
    const turn = Math.PI * (1.08 + (i / 25) * 0.84);
    const reach = 44 + 14 * ((i * 0.618) % 1);
    const x = 80 + Math.cos(turn) * reach;
    const y = 78 + Math.sin(turn) * reach * 0.72;
    return svg`<path class="leaf" d="M${x} ${y}q-7 10 -1 22q7 -10 1 -22"></path>`;
  });
  return html`<svg class="tree" viewBox="0 0 160 150" role="img" aria-label=${label}>
    <path class="bark" d="M74 132C76 108 72 96 76 74M88 132C85 108 90 96 84 74M80 78C66 66 58 60 48 54M81 76C92 64 100 58 112 52M80 74V44"></path>
    ${leaves}<path class="soil" d="M4 132H156"></path><rect class="hidden" x="4" y="132" width="152" height="16"></rect></svg>`;
}
