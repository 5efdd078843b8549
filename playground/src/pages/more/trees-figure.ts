import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { measure, type Result } from "rootledger";
import { scenarioFileOf } from "../../state/scenario-file.js";
import type { Scene } from "../../state/scene.js";
import { whole } from "../../text/number-format.js";
import { bare } from "../../text/quantity.js";
import { soilMoreWords } from "../../text/soil-more-words.js";
import { words } from "../../text/words.js";
import { startWorker } from "../../worker/start-worker.js";
import { Sweep } from "../../worker/sweep.js";
import { pageStyles } from "../page-styles.js";

const treeNames = ["under-fed", "mean", "over-fed"] as const;
type Tree = (typeof treeNames)[number];
const told = ["applied", "thirsty", "airless", "below-roots"] as const;

/** The tree at each end of lines that drain beside the average one, programme by programme; begun when it is first seen. */
export class TreesFigure extends LitElement {
  static override properties = {
    scene: { attribute: false },
    compared: { attribute: false },
    files: { attribute: false },
  };
  declare scene: Scene;
  /** The comparison file of the scene, and texts that the worker does not carry. */
  declare compared: () => object;
  declare files: Readonly<Record<string, string>>;

  static override styles = [
    pageStyles,
    css`
      :host { border-top: 1.5px solid var(--ink); padding: 1.1rem 0 1.6rem; }
      h2 { font-size: var(--size-large); line-height: 1.15; margin: 0 0 0.3rem; }
      h3 { font-size: var(--size-body); font-weight: 650; margin: 0.9rem 0 0.3rem; }
      p { max-width: 46rem; }
      .scroll { overflow-x: auto; }
      .scroll:focus-visible { outline: 3px solid var(--ink); }
      table { border-collapse: collapse; font-size: var(--size-small); }
      caption { text-align: left; color: var(--ink-quiet); }
      th, td { text-align: right; font-weight: 400; padding: 0.2em 0 0.2em 1.1em; border-bottom: 1px solid var(--rule); white-space: nowrap; }
      th:first-child, td:first-child { text-align: left; padding-left: 0; }
      thead th { color: var(--ink-quiet); }
      ul { margin: 0.4rem 0 0; padding-left: 1.1em; max-width: 46rem; }
      .failed { border-left: 4px solid var(--ink); padding-left: 0.8rem; }
    `,
  ];

  readonly #sweep = new Sweep(startWorker);
  #asked = "";

  constructor() {
    super();
    this.#sweep.addEventListener("sweep-changed", () => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sweep.end();
    this.#asked = "";
  }

  override willUpdate(): void {
    if (!this.compared) return;
    const file = this.compared();
    const key = JSON.stringify(file);
    if (key === this.#asked) return;
    this.#asked = key;
    const { soils, programmes } = this.scene;
    this.#sweep.ask(
      file,
      soils.flatMap((_, soil) =>
        programmes.flatMap((_, programme) =>
          treeNames.map((tree) => ({ file: scenarioFileOf(file, soil, programme, "tree"), tree })),
        ),
      ),
      this.files,
    );
  }

  override render(): TemplateResult | typeof nothing {
    if (!this.compared) return nothing;
    const w = soilMoreWords();
    const { answers, all, done, trouble } = this.#sweep;
    const failed = trouble !== undefined;
    const faults = trouble?.kind === "faults" ? trouble.faults : [];
    const message = trouble?.kind === "failed" ? trouble.message : "";
    return html`<h2>${w.trees}</h2><p class="small">${w.treesWhat}</p>
      <div role="status">${done ? nothing : failed ? html`<p class="failed"><strong>${w.treesFailed}.</strong> ${faults.map((f) => words.states.fault(f))} ${message}</p>` : html`<p>${w.treesRunning(answers.length, all)}</p>`}</div>
      ${done ? this.scene.soils.map((_, soil) => this.#soil(soil)) : nothing}`;
  }

  #soil(soil: number): TemplateResult {
    const w = soilMoreWords();
    const { texture, structure } = this.scene.soils[soil]!;
    const name = words.soil.name(texture, structure);
    const { programmes } = this.scene;
    const rows = programmes.flatMap((_, p) =>
      treeNames.map((tree) => ({ p, tree, values: told.map((id) => this.#value(soil, p, tree, id)) })),
    );
    const findings = programmes.map((_, p) => {
      const more = this.#value(soil, p, "over-fed", "applied") - this.#value(soil, p, "mean", "applied");
      const airless = this.#value(soil, p, "over-fed", "airless") - this.#value(soil, p, "mean", "airless");
      return w.treesFinding(name, "ABCD"[p]!, more, airless);
    });
    const changes = programmes.slice(1).map((_, p) => {
      const change = (tree: Tree): number =>
        this.#value(soil, p + 1, tree, "airless") - this.#value(soil, p, tree, "airless");
      return w.treesChange(name, "ABCD"[p]!, "ABCD"[p + 1]!, change("mean"), change("over-fed"));
    });
    return html`<h3>${name}</h3><div class="scroll" tabindex="0" role="group" aria-label=${w.treesTable(name)}><table><caption>${w.treesTable(name)}</caption>
      <thead><tr><th scope="col">${w.tree}</th><th scope="col">${w.gets()}</th><th scope="col">${w.thirsty}</th><th scope="col">${w.airless}</th><th scope="col">${w.below()}</th></tr></thead>
      <tbody>${rows.map(({ p, tree, values: [applied, thirsty, airless, below] }) => html`<tr><th scope="row"><b>${"ABCD"[p]}</b> ${w.treeNames[tree]}</th><td>${bare("water", applied!, 4)}</td><td>${whole(thirsty!)}</td><td>${whole(airless!)}</td><td>${bare("water", below!, 3)}</td></tr>`)}</tbody></table></div>
      <ul>${[...findings, ...changes].map((line) => html`<li>${line}</li>`)}</ul>`;
  }

  #value(soil: number, programme: number, tree: Tree, id: string): number {
    const at = (soil * this.scene.programmes.length + programme) * treeNames.length + treeNames.indexOf(tree);
    const result: Result = this.#sweep.answers[at]!.result;
    return measure(result, id).values[result.trees.indexOf(tree)]!;
  }
}

customElements.define("rl-trees-figure", TreesFigure);
