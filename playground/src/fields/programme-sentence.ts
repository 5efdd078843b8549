import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { nextTurn } from "../charts/turn.js";
import type { ProgrammeScene } from "../state/scene.js";
import { clock } from "../text/number-format.js";
import { words } from "../text/words.js";
import { fieldStyles } from "./field-styles.js";
import { limits } from "./limits.js";
import "./number-field.js";

const everyOptions = [1, 2, 3, 4, 5, 6, 7, 10, 14];
const pulseOptions = [1, 2, 3, 4, 5, 6, 8, 10, 12];
const halfHours = Array.from({ length: 48 }, (_, i) => i * 30);
const gapOptions = [0, 15, 30, 45, 60, 90, 120, 180, 240];

/** Minutes since midnight. @example minutesOf("06:30") // 390 */
function minutesOf(time: string): number {
  const [hours, minutes] = time.split(":").map(Number);
  return hours! * 60 + minutes!;
}

/** A programme as one sentence whose words can be changed. */
export class ProgrammeSentence extends LitElement {
  static override properties = {
    programme: { attribute: false },
    pulseMinutes: { type: Number },
    letter: { type: String },
  };
  declare programme: ProgrammeScene | undefined;
  /** Length of a pulse as it will run, which the litres may set. */
  declare pulseMinutes: number;
  declare letter: string;

  static override styles = [
    fieldStyles,
    css`
      :host { display: block; }
      fieldset { border: 0; margin: 0; padding: 0; min-width: 0; }
      legend { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
      p { margin: 0; line-height: 1.9; }
    `,
  ];

  constructor() {
    super();
    this.pulseMinutes = 0;
    this.letter = "A";
  }

  /** The first drawing is a task of its own, so that opening the page is not one long one. */
  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await nextTurn();
    super.scheduleUpdate();
  }

  override render(): TemplateResult | typeof nothing {
    const p = this.programme;
    if (!p) return nothing;
    const w = words.programmes;
    const decided = p.rule === "replace-use" || p.rule === "depletion";
    return html`
      <fieldset>
        <legend>${w.group(this.letter)}</legend>
        <p>
          ${this.#choice(w.everyLabel, p.everyDays, everyOptions, w.every, (everyDays) => ({ everyDays }))},
          ${this.#choice(w.pulsesLabel, p.pulses, pulseOptions, decided ? w.decidedPulses : w.pulses, (pulses) => ({ pulses }))}${
            decided
              ? ","
              : html` ${this.#number(w.minutesLabel, this.pulseMinutes, limits.pulseMinutes, (pulseMinutes) => ({ pulseMinutes }), { unit: `${w.minutes},` })}`
          }
          ${p.pulses > 1 ? html`${this.#choice(w.gapLabel, p.gapMinutes, gapOptions, w.gap, (gapMinutes) => ({ gapMinutes }))},` : nothing}
          <span class="nowrap">${w.from} ${this.#choice(
            w.fromLabel,
            minutesOf(p.startTime),
            halfHours,
            (m) => clock(m / 60),
            (m) => ({ startTime: clock(m / 60) }),
          )}</span>
          ${w.through}
          ${this.#number(w.flowLabel, p.flowLPerH, limits.flowLPerH, (flowLPerH) => ({ flowLPerH }), { step: 0.1, quantity: "water", unit: `${w.flowUnit()}.` })}
        </p>
      </fieldset>
    `;
  }

  #choice(
    label: string,
    value: number,
    options: readonly number[],
    text: (value: number) => string,
    change: (value: number) => Partial<ProgrammeScene>,
  ): TemplateResult {
    const all = options.includes(value) ? options : [...options, value].sort((a, b) => a - b);
    return html`<select aria-label=${label} @change=${(e: Event) => this.#tell(change(Number((e.target as HTMLSelectElement).value)))}>
      ${all.map((option) => html`<option value=${option} ?selected=${option === value}>${text(option)}</option>`)}
    </select>`;
  }

  #number(
    label: string,
    value: number,
    ends: readonly [number, number],
    change: (value: number) => Partial<ProgrammeScene>,
    { step = 1, quantity, unit }: { step?: number; quantity?: "water"; unit: string },
  ): TemplateResult {
    const decimals = step < 1 ? 2 : value < 100 ? 1 : 0;
    return html`<rl-number-field .label=${label} .value=${value} .limits=${ends} .decimals=${decimals} .step=${step} .quantity=${quantity} .unit=${unit}
      @number-changed=${(e: CustomEvent<number>) => this.#tell(change(e.detail))}></rl-number-field>`;
  }

  #tell(detail: Partial<ProgrammeScene>): void {
    this.dispatchEvent(new CustomEvent("programme-changed", { detail, bubbles: true, composed: true }));
  }
}

customElements.define("rl-programme-sentence", ProgrammeSentence);
