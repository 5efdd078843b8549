import { css } from "lit";

/** The frame of every page: name, pages, and how the page is looked at. */
export const shellStyles = css`
  :host { display: block; max-width: 116rem; margin: 0 auto; padding: 0 clamp(1rem, 2.4vw, 2.5rem); }
  .top { display: flex; flex-wrap: wrap; gap: 0.3rem 1.2rem; align-items: baseline; padding: 0.8rem 0 0.5rem; border-bottom: 1px solid var(--rule); }
  .top strong { font-weight: 650; }
  .top .right { margin-left: auto; display: flex; gap: 1rem; align-items: baseline; flex-wrap: wrap; }
  nav { display: flex; flex-wrap: wrap; gap: 0 1.1rem; }
  nav a { color: var(--ink-quiet); text-decoration: none; padding: 0.25rem 0; border-bottom: 3px solid transparent; }
  nav a:hover { color: var(--ink); border-bottom-color: var(--rule-strong); }
  nav a[aria-current] { color: var(--ink); font-weight: 650; border-bottom-color: var(--ink); }
  nav a:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  button { font: inherit; color: var(--ink); background: none; border: 0; border-bottom: 1.5px solid var(--ink); padding: 0.1em 0.2em; cursor: pointer; }
  button:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  main:focus { outline: none; }
  .skip { position: absolute; left: -100vw; }
  .skip:focus { position: static; }
  .resume { margin: 0.6rem 0 0; }
  .resume a { color: var(--ink); }
  .resume a:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
  @media print { .resume { display: none; } }
  .fetching { padding: 2rem 0; color: var(--ink-quiet); }
  @media (max-width: 700px) {
    .wall { display: none; }
    nav { order: 3; width: 100%; gap: 0 1rem; justify-content: space-between; }
    nav a { font-size: 0.9375rem; padding: 0.4rem 0; }
    .top .right { gap: 0.6rem; font-size: var(--size-small); }
    .top { padding-bottom: 0; }
  }
  .top[data-wall] { padding: 0.2rem 0; border: 0; font-size: var(--size-small); }
  .top[data-wall] rl-choice-field { display: none; }
  @media print { .top { display: none; } }
`;
