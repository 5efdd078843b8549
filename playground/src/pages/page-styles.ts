import { css } from "lit";

/** What the page and its rows share: the grid of programmes, headings, figures, the dimming of stale pictures. */
export const pageStyles = css`
  :host { display: block; }
  h1, h2, h3, figure, p { margin: 0; }
  .with-rail { display: grid; grid-template-columns: minmax(0, 1fr) 17.5rem; column-gap: 2.25rem; }
  .columns { display: grid; grid-template-columns: repeat(var(--programmes), minmax(0, 1fr)); column-gap: var(--gap); }
  .small { font-size: var(--size-small); color: var(--ink-quiet); }
  .stale { opacity: 0.45; transition: opacity 0.2s 0.15s; }
  .only-phone { display: none; }
  @media (max-width: 1120px) {
    .with-rail { grid-template-columns: minmax(0, 1fr); }
  }
  @media (max-width: 700px) {
    .columns:not(.all) { grid-template-columns: minmax(0, 1fr); }
    .columns:not(.all) > :not([data-shown]) { display: none; }
    .columns.all { grid-template-columns: minmax(0, 1fr); row-gap: 0.6rem; }
    .only-phone { display: revert; }
  }
`;
