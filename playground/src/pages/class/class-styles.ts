import { css } from "lit";

/** Styles of the page of lessons, of its wall and of its handout. */
export const classStyles = css`
  h1 { font-size: var(--size-large); line-height: 1.15; text-wrap: balance; margin: 1rem 0 0.8rem; }
  h2, h3 { font-size: var(--size-body); font-weight: 650; margin: 0 0 0.3rem; }
  .stage:focus-visible { outline: 2px solid var(--rule-strong); outline-offset: 8px; border-radius: 2px; }
  .stage:focus:not(:focus-visible) { outline: none; }
  .question { font-size: 1.25rem; line-height: 1.3; margin: 0.2rem 0 0.9rem; max-width: 46rem; }
  .answer { font-size: 1.125rem; max-width: 50rem; border-left: 4px solid var(--ink); padding-left: 0.8rem; margin: 0.6rem 0; }
  .buttons, .votes { display: flex; flex-wrap: wrap; gap: 0.5rem; margin: 0.7rem 0; align-items: center; }
  button { font: inherit; color: var(--ink); background: var(--paper); border: 1.5px solid var(--ink); border-radius: 1.4em; min-height: 2.6rem; padding: 0.1em 1em; cursor: pointer; }
  button.strong { color: var(--paper); background: var(--ink); font-weight: 650; }
  button:focus-visible, input:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  kbd { font: inherit; font-weight: 650; border: 1.5px solid currentColor; border-radius: 0.3em; padding: 0 0.4em; margin-right: 0.2em; }
  .controls { display: flex; flex-wrap: wrap; gap: 0 1.6rem; align-items: end; position: sticky; top: 0; z-index: 2; background: var(--paper); }
  .slider { display: grid; gap: 0.2rem; flex: 1 1 22rem; max-width: 46rem; margin: 0.3rem 0; }
  .above { display: flex; flex-wrap: wrap; justify-content: center; align-items: end; gap: 0.5rem 1.5rem; }
  .slider output { font-weight: 650; font-size: 1.25rem; }
  .slider input { width: 100%; height: 2.75rem; accent-color: var(--ink); margin: 0; }
  .sights { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(20rem, 100%), 1fr)); gap: 0 var(--gap); margin: 0.8rem 0; }
  .sights > figure { display: grid; grid-row: span 10; grid-template-rows: subgrid; align-content: start; min-width: 0; }
  .sights > figure > * { margin-bottom: 0.4rem; }
  .sights[data-count="1"] { grid-template-columns: minmax(0, 46rem); }
  .sights > .wide { grid-column: 1 / -1; max-width: 46rem; }
  .tree { display: block; width: min(14rem, 60%); margin: 0; }
  .sights[data-open="soil"] .tree, .sights[data-open="tension"] .tree, .sights[data-open="all"] .tree { width: min(8rem, 40%); }
  .tree .bark { fill: none; stroke: var(--ink); stroke-width: 2; stroke-linecap: round; }
  .tree .leaf { fill: var(--fine); stroke: var(--ink-quiet); stroke-width: 0.8; }
  .tree .soil { stroke: var(--ink); stroke-width: 1.6; }
  .tree .hidden { fill: var(--rule); }
  /* On a wall the answer stands beside the sweep, so that no one scrolls for it. */
  :host([wall]) .told { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(26rem, 100%), 1fr)); gap: 0 2.5rem; align-items: center; }
  .sweeps { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(20rem, 100%), 1fr)); gap: 1.2rem 2.5rem; margin: 1rem 0; }
  .choose { border-top: 1px solid var(--rule); margin-top: 1.5rem; padding: 0.9rem 0 2rem; display: grid; gap: 0.5rem; justify-items: start; }
  button:disabled { color: var(--ink-quiet); border-style: dashed; cursor: not-allowed; }
  button.switch::before { content: ""; display: inline-block; width: 1.7em; height: 0.9em; border: 1.5px solid currentColor; border-radius: 0.5em; margin-right: 0.5em; vertical-align: -0.1em; background: radial-gradient(circle at 0.42em 50%, currentColor 0.3em, transparent 0.32em); }
  button.switch[aria-checked="true"] { color: var(--paper); background: var(--ink); }
  button.switch[aria-checked="true"]::before { background: radial-gradient(circle at 1.25em 50%, currentColor 0.3em, transparent 0.32em); }
  .early { opacity: 0.45; }
  .number { font-size: var(--size-body); line-height: 1.15; margin: 0 0 0.5rem; }
  .number strong { font-size: var(--size-large); margin-right: 0.3em; }
  .number span { color: var(--ink-quiet); }
  .instruments { display: grid; justify-items: center; gap: 0.1rem; }
  .gauge { width: 9rem; }
  .gauge text { font-size: 11px; fill: var(--ink-quiet); }
  .gauge .said { font-size: 20px; font-weight: 650; fill: var(--ink); }
  .gauge .dial { fill: none; stroke: var(--ink); stroke-width: 2; }
  .gauge .hand { stroke: var(--ink); stroke-width: 3.5; stroke-linecap: round; }
  .gauge .hub { fill: var(--ink); }
  .drinks { font-size: 1.125rem; font-weight: 650; }
  .cup { width: min(16rem, 100%); height: 0.7rem; }
  .cup .drunk { fill: var(--below); }
  .cup .wanted { fill: none; stroke: var(--ink); vector-effect: non-scaling-stroke; }
  .verdict { font-size: 1.125rem; margin: 0.2rem 0; }
  .sources { margin: 0.5rem 0 0; padding-left: 1.1em; }
  .failed table { border-collapse: collapse; font-size: var(--size-small); }
  .failed :is(th, td) { text-align: left; vertical-align: top; padding: 0.2em 0.9em 0.2em 0; border-bottom: 1px solid var(--rule); font-weight: 400; overflow-wrap: anywhere; }
  details summary { cursor: pointer; }
  details :is(dl, ul, p) { font-size: var(--size-small); max-width: 46rem; }
  dt { font-weight: 650; }
  dd { margin: 0 0 0.4em 1em; }
  .measures { columns: 2 16rem; padding-left: 1.1em; }
  .failed { border-left: 4px solid var(--ink); padding-left: 0.8rem; }
  .handout { max-width: 46rem; padding: 0 0 3rem; }
  .handout h2 { margin: 1.1rem 0 0.2rem; }
  .handout .line { border-bottom: 1px solid var(--ink); min-height: 1.9em; margin: 0.4rem 0; color: var(--ink-quiet); }
  .handout .box { display: inline-block; border: 1.2px solid var(--ink); padding: 0 0.5em; margin: 0.15em 0.3em 0.15em 0; }
  .handout .blank { display: inline-block; min-width: 5em; border-bottom: 1px solid var(--ink); }
  .handout table { border-collapse: collapse; }
  .handout :is(th, td) { text-align: left; font-weight: 400; padding: 0.25em 1.2em 0.25em 0; border-bottom: 1px solid var(--rule-strong); }
  .handout .key { font-weight: 650; }
  .handout li { break-inside: avoid; margin-bottom: 0.6rem; }
  @media (max-width: 700px) {
    h1 { font-size: 1.25rem; }
    .question { font-size: 1.0625rem; }
    .controls { display: contents; }
    .slider { position: sticky; top: 0; z-index: 2; background: var(--paper); padding-bottom: 0.2rem; }
    .answer { font-size: 1rem; }
  }
  :host([wall]) rl-number-table { display: none; }
  :host([wall]) .sights > figure > p:not(.number) { display: none; }
  :host([wall]) h1 { margin: 0.3rem 0 0.6rem; font-size: 1.3rem; }
  :host([wall]) .question { font-size: 1.1rem; margin: 0.1rem 0 0.4rem; max-width: none; }
  :host([wall]) :is(.buttons, .votes) { margin: 0.3rem 0; }
  :host([wall]) .number { font-size: var(--size-body); }
  :host([wall]) .number strong { font-size: 2.2rem; line-height: 1; }
  :host([wall]) :is(.sources, .small) { display: none; }
  @media print { .no-print { display: none; } }
`;
