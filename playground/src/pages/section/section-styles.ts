import { css } from "lit";

/** Styles of the section's page. */
export const sectionStyles = css`
  h1 { font-size: var(--size-large); line-height: 1.15; text-wrap: balance; margin: 1rem 0 0.5rem; min-height: 1.2em; }
  h2 { font-size: var(--size-body); font-weight: 650; line-height: 1.35; margin: 0 0 0.5rem; text-wrap: balance; }
  figure { margin: 0 0 1.6rem; }
  .choices { display: flex; flex-wrap: wrap; gap: 0.4rem 1.6rem; margin: 0 0 0.9rem; align-items: baseline; }
  .stage { display: grid; grid-template-columns: minmax(0, 1fr) 21rem; column-gap: 2.5rem; }
  .four { display: grid; grid-template-columns: 1fr 1fr; gap: 0.5rem; }
  .storage, .traces { border-top: 1px solid var(--rule); padding-top: 1rem; }
  rl-soil-key { margin: 0.8rem 0 0.3rem; }
  label input { font: inherit; font-weight: 650; color: var(--ink); background: var(--paper-lift); border: 0; border-bottom: 1.5px solid var(--ink); width: 6em; padding: 0.1em 0.2em; }
  label input:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  .away { display: flex; flex-wrap: wrap; gap: 0.4rem 0.7rem; align-items: baseline; margin: 1rem 0 1.5rem; }
  .away button { font: inherit; color: var(--ink); background: none; border: 0; border-bottom: 1.5px solid var(--ink); padding: 0.2em 0.1em; cursor: pointer; }
  .away button:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  footer { position: sticky; bottom: 0; z-index: 3; background: var(--paper); border-top: 1.5px solid var(--ink); padding: 0.55rem 0 max(0.55rem, env(safe-area-inset-bottom)); }
  @media (max-width: 1000px) {
    .stage { grid-template-columns: minmax(0, 1fr); }
  }
  @media (max-width: 700px) {
    h1 { font-size: 1.25rem; }
  }
  :host([wall]) :is(.storage, .traces, .choices, rl-water-translator, rl-number-table) { display: none; }
  :host([wall]) h1 { margin: 0.4rem 0; }
  :host([wall]) .stage { grid-template-columns: minmax(0, 1fr) 15rem; }
  @media print { footer { display: none; } }
`;
