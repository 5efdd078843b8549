import { css, svg, type TemplateResult } from "lit";

/** Fills for thirsty and airless in drawings: dots and cross-hatching on their own colours. Place inside `<defs>`. */
export function statePatterns(em: number): TemplateResult {
  const size = em * 0.5;
  const half = size / 2;
  return svg`
    <pattern id="thirsty" width=${size} height=${size} patternUnits="userSpaceOnUse">
      <rect class="thirsty-ground" width=${size} height=${size}></rect>
      <circle class="mark" cx=${half / 2} cy=${half / 2} r=${em * 0.085}></circle>
      <circle class="mark" cx=${half * 1.5} cy=${half * 1.5} r=${em * 0.085}></circle>
    </pattern>
    <pattern id="airless" width=${size} height=${size} patternUnits="userSpaceOnUse">
      <rect class="airless-ground" width=${size} height=${size}></rect>
      <path class="mark-line" stroke-width=${em * 0.07} d="M0 0L${size} ${size}M${size} 0L0 ${size}"></path>
    </pattern>
  `;
}

export const statePatternStyles = css`
  .thirsty-ground { fill: var(--thirsty); }
  .airless-ground { fill: var(--airless); }
  .mark { fill: var(--paper); }
  .mark-line { stroke: var(--paper); fill: none; }
`;
