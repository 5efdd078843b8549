import { css } from "lit";

/** The sheet is black on white, half a page, to be read without glasses. */
export const sheetStyles = css`
  h1 { font-size: var(--size-large); line-height: 1.15; margin: 1rem 0 0.5rem; }
  .choices { display: flex; flex-wrap: wrap; gap: 0.4rem 1.6rem; margin-bottom: 1rem; }
  article { max-width: 44rem; background: #ffffff; color: #000000; border: 1px solid var(--rule-strong); padding: 1.4rem 1.6rem; }
  h2 { font-size: 1.375rem; line-height: 1.2; margin: 0 0 0.4rem; }
  h3 { font-size: 1rem; margin: 0.9rem 0 0.2rem; }
  .amount { font-size: 1.5rem; font-weight: 650; line-height: 1.25; margin: 0.3rem 0 0.6rem; padding-bottom: 0.6rem; border-bottom: 1.5px solid #000000; }
  .how { font-size: 1.125rem; line-height: 1.4; }
  .read { white-space: nowrap; }
  .blank { display: inline-block; width: 5em; border-bottom: 1px solid #000000; }
  .failed { border-left: 4px solid var(--ink); padding-left: 0.8rem; }
  ul { margin: 0; padding-left: 1.2em; font-size: 1.0625rem; }
  li { margin: 0.15rem 0; }
  article .small { color: #000000; margin-top: 0.5rem; }
  .write { border-bottom: 1px solid #000000; min-height: 1.8em; margin: 0.5rem 0 0; }
  button { font: inherit; color: var(--paper); background: var(--ink); border: 0; border-radius: 1.3em; min-height: 2.6rem; padding: 0.1em 1.1em; margin: 1rem 0 2rem; cursor: pointer; }
  button[aria-disabled="true"] { color: var(--ink); background: none; border: 1.5px dashed var(--ink); cursor: default; }
  .away { display: flex; flex-wrap: wrap; gap: 0.3rem 1rem; align-items: center; margin: 1rem 0 2rem; }
  .away button { margin: 0; }
  .earlier { max-width: 44rem; border-top: 1px solid var(--rule); padding: 0.8rem 0 2rem; }
  .earlier h2 { font-size: var(--size-body); }
  summary { cursor: pointer; padding: 0.25rem 0; }
  summary:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  button:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  @media (max-width: 700px) {
    h1 { font-size: 1.25rem; }
    article { padding: 1rem; }
  }
  @media print {
    .no-print { display: none; }
    article { border: 0; padding: 0; max-width: none; font-size: 10.5pt; line-height: 1.3; }
    /* What can stand in one paragraph or side by side does, so that it is half a page. */
    .how, article .small { display: inline; margin-right: 0.3em; }
    .how { font-size: 11pt; }
    article :is(p, ul) { font-size: 10.5pt; line-height: 1.3; }
    h2 { font-size: 14pt; margin-bottom: 0.2rem; }
    .write { min-height: 0; margin-top: 0.3rem; }
    article .amount { font-size: 15pt; margin-bottom: 0.3rem; padding-bottom: 0.3rem; }
    .parts { display: grid; grid-template-columns: 1.15fr 1fr; gap: 0 8mm; }
    article .small { font-size: 9pt; line-height: 1.25; }
    h3 { margin-top: 0.4rem; }
  }
`;
