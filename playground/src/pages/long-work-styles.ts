import { css } from "lit";

/** Work that takes its time and is asked for: its button, its progress, its failure. */
export const longWorkStyles = css`
  p { margin: 0; }
  .small { font-size: var(--size-small); color: var(--ink-quiet); }
  button { font: inherit; font-weight: 650; color: var(--ink); background: var(--paper); border: 1.5px solid var(--ink); border-radius: 1.4em; min-height: 2.4rem; padding: 0.2em 1em; cursor: pointer; }
  button:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  button[aria-disabled="true"] { border-style: dashed; font-weight: 400; cursor: default; }
  progress { appearance: none; width: 12em; height: 0.6em; border: 1px solid var(--ink); background: none; }
  progress::-webkit-progress-bar { background: none; }
  progress::-webkit-progress-value { background: var(--ink); }
  progress::-moz-progress-bar { background: var(--ink); }
  .failed { border-left: 4px solid var(--ink); padding-left: 0.8rem; }
`;
