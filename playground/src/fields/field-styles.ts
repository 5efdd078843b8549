import { css } from "lit";

/** Controls inside a sentence: text on a line, no boxes, large enough for a thumb. */
export const fieldStyles = css`
  select, input {
    font: inherit; font-weight: 650; line-height: 1.3; color: var(--ink); background: var(--paper-lift); border: 0;
    border-bottom: 1.5px solid var(--ink); border-radius: 0.2em 0.2em 0 0; padding: 0.1em 0.2em; margin: 0 0.05em;
    font-variant-numeric: tabular-nums;
  }
  select { cursor: pointer; }
  input[type="number"] { width: 3.6em; text-align: right; appearance: textfield; }
  input[type="number"]::-webkit-inner-spin-button { display: none; }
  input[type="checkbox"] { width: 1.15em; height: 1.15em; accent-color: var(--ink); vertical-align: -0.15em; margin: 0 0.35em 0 0; }
  :is(select, input, button):focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; border-radius: 0.2em; }
  input:invalid { border-bottom-style: wavy; text-decoration: underline wavy var(--ink); }
  .nowrap { white-space: nowrap; }
  @media (pointer: coarse) {
    select, input { min-height: 2.4rem; }
  }
`;
