import { css } from "lit";

/** Styles of the page of lessons, of its wall and of its handout. */
export const classStyles = css`
  h1 { font-size: var(--size-large); line-height: 1.15; text-wrap: balance; margin: 1rem 0 0.8rem; }
  h2, h3 { font-size: var(--size-body); font-weight: 650; margin: 0 0 0.3rem; }
  .stage:focus-visible { outline: 3px solid var(--ink); outline-offset: 8px; }
  .stage:focus:not(:focus-visible) { outline: none; }
  .question { font-size: 1.25rem; line-height: 1.3; margin: 0.2rem 0 0.9rem; max-width: 46rem; }
  .answer { font-size: 1.125rem; max-width: 50rem; border-left: 4px solid var(--ink); padding-left: 0.8rem; margin: 0.6rem 0; }
  .buttons, .votes { display: flex; flex-wrap: wrap; gap: 0.5rem; margin: 0.7rem 0; align-items: center; }
  button { font: inherit; color: var(--ink); background: var(--paper); border: 1.5px solid var(--ink); border-radius: 1.4em; min-height: 2.6rem; padding: 0.1em 1em; cursor: pointer; }
  button.strong { color: var(--paper); background: var(--ink); font-weight: 650; }
  button:focus-visible, input:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  kbd { font: inherit; font-weight: 650; border: 1.5px solid currentColor; border-radius: 0.3em; padding: 0 0.4em; margin-right: 0.2em; }
  .slider { display: grid; gap: 0.2rem; max-width: 46rem; margin: 0.6rem 0; }
  .slider output { font-weight: 650; font-size: 1.25rem; }
  .slider input { width: 100%; height: 2.75rem; accent-color: var(--ink); margin: 0; }
  .columns { grid-template-columns: repeat(auto-fit, minmax(min(20rem, 100%), 1fr)); row-gap: 1rem; margin: 0.8rem 0; }
  .columns[data-count="1"] { grid-template-columns: minmax(0, 46rem); }
  .columns > :not([data-shown]) { display: block; }
  .columns > .wide { grid-column: 1 / -1; max-width: 46rem; }
  .tree { display: block; width: min(16rem, 70%); margin: 0 auto; }
  .tree .bark { fill: none; stroke: var(--ink); stroke-width: 2; stroke-linecap: round; }
  .tree .leaf { fill: var(--fine); stroke: var(--ink-quiet); stroke-width: 0.8; }
  .tree .soil { stroke: var(--ink); stroke-width: 1.6; }
  .tree .hidden { fill: var(--rule); }
  .sweeps { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(20rem, 100%), 1fr)); gap: 1.2rem 2.5rem; margin: 1rem 0; }
  .choose { border-top: 1px solid var(--rule); margin-top: 1.5rem; padding: 0.9rem 0 2rem; display: grid; gap: 0.5rem; justify-items: start; }
  .failed { border-left: 4px solid var(--ink); padding-left: 0.8rem; }
  .handout { max-width: 46rem; padding: 0 0 3rem; }
  .handout h2 { margin: 1.1rem 0 0.2rem; }
  .handout .line { border-bottom: 1px solid var(--ink); min-height: 1.9em; margin: 0.4rem 0; color: var(--ink-quiet); }
  .handout .box { display: inline-block; border: 1.2px solid var(--ink); padding: 0 0.5em; margin: 0.15em 0.3em 0.15em 0; }
  .handout .key { font-weight: 650; }
  .handout li { break-inside: avoid; margin-bottom: 0.6rem; }
  @media (max-width: 700px) {
    h1 { font-size: 1.25rem; }
    .question { font-size: 1.0625rem; }
  }
  :host([wall]) :is(.choose .small, .file, rl-number-table) { display: none; }
  :host([wall]) .columns > figure > p { display: none; }
  @media print { .no-print { display: none; } }
`;
