import { css } from "lit";

/** Styles of a place where files come in. */
export const fileDropStyles = css`
  :host { display: block; border-top: 1px solid var(--rule); padding: 0.9rem 0; }
  h2 { font-size: var(--size-body); font-weight: 650; margin: 0 0 0.3rem; }
  p { margin: 0.3rem 0; }
  .small { font-size: var(--size-small); color: var(--ink-quiet); }
  .failed { border-left: 4px solid var(--ink); padding-left: 0.8rem; margin: 0.6rem 0; }
  .offer { display: grid; gap: 0.5rem; justify-items: start; margin: 0.8rem 0; max-width: 30rem; }
  button { font: inherit; color: var(--ink); background: var(--paper); border: 1.5px solid var(--ink); border-radius: 1.3em; min-height: 2.4rem; padding: 0.1em 0.9em; cursor: pointer; }
  button.strong { color: var(--paper); background: var(--ink); font-weight: 650; }
  :is(button, input, .scroll):focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  .scroll { overflow-x: auto; }
  table { border-collapse: collapse; font-size: var(--size-small); }
  th, td { text-align: left; font-weight: 400; padding: 0.2em 1em 0.2em 0; border-bottom: 1px solid var(--rule); }
  thead th { color: var(--ink-quiet); }
  ul { margin: 0.2rem 0; padding-left: 1.1em; }
`;
