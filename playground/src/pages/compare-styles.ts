import { css } from "lit";

/** Styles of the first page. */
export const compareStyles = css`
  .intro { display: flex; flex-wrap: wrap; gap: 0.4rem 2.2rem; align-items: baseline; margin: 1rem 0 0.7rem; }
  .intro > div { min-height: 1.5em; }
  h1 { font-size: var(--size-large); line-height: 1.15; text-wrap: balance; }
  .heads { position: sticky; top: 0; z-index: 2; background: var(--paper); padding: 0.35rem 0; border-bottom: 1px solid var(--rule); }
  .heads b { display: inline-block; min-width: 1.2em; }
  .heads h2 { font-size: var(--size-body); margin: 0; font-weight: 650; }
  .sentences { padding: 0.4rem 0 0.9rem; }
  .shared div { display: grid; gap: 0.5rem; justify-items: start; padding-top: 0.25rem; }
  .shared summary { cursor: pointer; padding: 0.5rem 0; }
  .folded summary { cursor: pointer; padding: 0.3rem 0; width: fit-content; font-size: var(--size-small); text-decoration: underline; text-underline-offset: 0.2em; text-decoration-color: var(--rule-strong); }
  /* Room for the pictures before they are drawn, so that nothing further down counts as near the window and is fetched. */
  rl-soil-row { display: block; min-height: 62rem; }
  :host([wall]) rl-soil-row { min-height: 0; }
  rl-window-figure, rl-trees-figure { display: block; min-height: 1px; }
  .tools { display: flex; flex-wrap: wrap; gap: 0 2rem; padding-bottom: 0.5rem; }
  .tools details[open] { flex-basis: 100%; }
  .tools .folded summary { font-size: var(--size-body); }
  .folded summary:focus-visible, .quiet button:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  .quiet { display: flex; gap: 1rem; }
  .quiet button { font: inherit; font-size: var(--size-small); color: var(--ink); background: none; border: 0; border-bottom: 1.5px solid var(--rule-strong); padding: 0.15em 0.1em; cursor: pointer; }
  .empty .with-rail { padding: 4rem 0 12rem; border-top: 1.5px solid var(--rule); }
  .empty .columns > div { height: 11rem; border: 1px solid var(--rule-strong); border-top: 1.5px solid var(--ink); }
  .tabs { border: 0; padding: 0; margin: 0 0 0.4rem; }
  .tabs legend { padding: 0; color: var(--ink-quiet); font-size: var(--size-small); }
  .tabs div { display: grid; grid-auto-flow: column; grid-auto-columns: 1fr; border: 1.5px solid var(--ink); border-radius: 1.4rem; overflow: hidden; }
  .tabs label { text-align: center; padding: 0.5rem 0.3rem; cursor: pointer; font-size: var(--size-small); line-height: 1.2; }
  .tabs b { display: block; }
  .tabs input { position: absolute; opacity: 0; pointer-events: none; }
  .tabs label:has(input:checked) { background: var(--ink); color: var(--paper); }
  .tabs label:has(input:focus-visible) { outline: 3px solid var(--ink); outline-offset: -6px; }
  footer { position: sticky; bottom: 0; z-index: 3; background: var(--paper); border-top: 1.5px solid var(--ink); padding: 0.55rem 0 max(0.55rem, env(safe-area-inset-bottom)); }
  .about { border-top: 1.5px solid var(--ink); padding: 1.2rem 0 2rem; display: grid; gap: 0.5rem; max-width: 46rem; }
  .about li { margin: 0.2rem 0; }
  .about summary { cursor: pointer; }
  .about summary:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  @media (max-width: 700px) {
    .heads { position: static; }
    .heads { display: none; }
    h1 { font-size: 1.25rem; }
    .tabs legend { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  }
  :host([wall]) :is(.intro > div, .sentences, .tabs) { display: none; }
  :host([wall]) .intro { position: absolute; width: 1px; height: 1px; margin: 0; overflow: hidden; clip-path: inset(50%); }
  :host([wall]) .with-rail { grid-template-columns: minmax(0, 1fr); }
  @media print {
    footer, .tabs { display: none; }
    .heads { position: static; }
  }
`;
