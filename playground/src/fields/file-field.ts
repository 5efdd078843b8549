import { css, html, LitElement, type TemplateResult } from "lit";
import { dataWords } from "../text/data-words.js";

/** One file, chosen or (with `drop`) dropped. The button is the page's own: a browser's would speak the device's language. */
export class FileField extends LitElement {
  static override properties = {
    label: { type: String },
    accept: { type: String },
    drop: { type: Boolean, reflect: true },
  };
  declare label: string;
  declare accept: string;
  declare drop: boolean;

  static override styles = css`
    :host { display: block; }
    label { display: flex; flex-wrap: wrap; gap: 0.5rem 0.8rem; align-items: center; justify-content: start; cursor: pointer; position: relative; }
    :host([drop]) label { border: 1.5px dashed var(--rule-strong); padding: 1rem; max-width: 40rem; }
    input { position: absolute; width: 1px; height: 1px; opacity: 0; }
    .button { border: 1.5px solid var(--ink); border-radius: 1.3em; min-height: 2.2rem; padding: 0.1em 0.9em; display: inline-flex; align-items: center; }
    input:focus-visible + .button { outline: 3px solid var(--ink); outline-offset: 2px; }
  `;

  constructor() {
    super();
    this.label = "";
    this.accept = "";
    this.drop = false;
  }

  override render(): TemplateResult {
    return html`<label @dragover=${this.#over} @drop=${this.#dropped}><span>${this.label}</span>
      <input type="file" accept=${this.accept} @change=${this.#chosen}><span class="button" aria-hidden="true">${dataWords().chooseFile}</span></label>`;
  }

  #over(event: DragEvent): void {
    if (this.drop) event.preventDefault();
  }

  #dropped(event: DragEvent): void {
    if (!this.drop) return;
    event.preventDefault();
    this.#say(event.dataTransfer?.files[0]);
  }

  /** The field is emptied, so that the same file, mended, can be chosen again. */
  #chosen(event: Event): void {
    const input = event.target as HTMLInputElement;
    this.#say(input.files?.[0]);
    input.value = "";
  }

  #say(file: File | undefined): void {
    if (file) this.dispatchEvent(new CustomEvent<File>("file-chosen", { detail: file }));
  }
}

customElements.define("rl-file-field", FileField);
