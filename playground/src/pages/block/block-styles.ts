import { css } from "lit";

/** Styles of the block's page. */
export const blockStyles = css`
  h1 { font-size: var(--size-large); line-height: 1.15; text-wrap: balance; margin: 1rem 0 0.6rem; }
  h2 { font-size: var(--size-body); font-weight: 650; margin: 0 0 0.4rem; }
  figure { margin: 0 0 1.6rem; }
  p { margin: 0.3rem 0; }
  .sheet { display: grid; grid-template-columns: minmax(0, 1fr) 19rem; column-gap: 2.5rem; }
  rl-years-figure { display: block; min-height: 1px; border-top: 1px solid var(--rule); padding-top: 0.9rem; }
  .key { display: flex; flex-wrap: wrap; gap: 0.3rem 0.5rem; align-items: center; }
  .item { display: inline-flex; align-items: center; gap: 0.4rem; white-space: nowrap; margin-right: 0.8rem; }
  .patch { width: 1.6rem; height: 0.9rem; display: inline-block; }
  .roots { background: var(--fine); border: 1px solid var(--ink-quiet); }
  .wet { background: color-mix(in oklab, var(--below) 30%, var(--paper)); }
  .canopy { border: 1.5px dotted var(--rule-strong); }
  .dot { width: 0.7rem; height: 0.7rem; border-radius: 50%; background: var(--ink); border: 2px solid var(--ink); box-sizing: border-box; }
  /* The cross of the plan. */
  .shut { background: linear-gradient(45deg, transparent 42%, var(--ink) 42% 58%, transparent 58%), linear-gradient(-45deg, transparent 42%, var(--ink) 42% 58%, transparent 58%), var(--paper); }
  .buttons { display: flex; flex-wrap: wrap; gap: 0.5rem; margin: 0.6rem 0; }
  button { font: inherit; color: var(--ink); background: var(--paper); border: 1.5px solid var(--ink); border-radius: 1.3em; min-height: 2.4rem; padding: 0.1em 0.9em; cursor: pointer; }
  button:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  .bar { display: block; width: 100%; height: 1.6rem; }
  .on { fill: var(--fine); }
  .hatch { stroke: var(--ink-quiet); stroke-width: 1.4; }
  .frame { fill: none; stroke: var(--ink); }
  .two { display: flex; justify-content: space-between; }
  .warning { border-left: 4px solid var(--ink); padding-left: 0.7rem; }
  fieldset { border: 0; border-top: 1px solid var(--rule); margin: 0; padding: 0.7rem 0 0.9rem; display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.45rem; justify-items: start; min-width: 0; }
  fieldset rl-number-field { width: 100%; }
  legend { font-weight: 650; padding: 0; float: left; width: 100%; }
  fieldset label { display: block; }
  input[type="checkbox"] { width: 1.15em; height: 1.15em; accent-color: var(--ink); vertical-align: -0.15em; margin: 0 0.35em 0 0; }
  input:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  @media (max-width: 1000px) {
    .sheet { grid-template-columns: minmax(0, 1fr); }
  }
  @media (max-width: 700px) { h1 { font-size: 1.25rem; } }
`;
