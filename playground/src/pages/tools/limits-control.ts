import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import type { Arm } from "rootledger/compare";
import { cutCounts } from "rootledger/programme";
import "../../fields/clock-field.js";
import { limits as ends } from "../../fields/limits.js";
import "../../fields/number-field.js";
import { dearHours } from "../../state/power-hours.js";
import type { ProgrammePlan } from "../../state/programme-plan.js";
import type { PumpScene, Scene } from "../../state/scene.js";
import { amount } from "../../text/number-format.js";
import { toolsWords } from "../../text/tools-words.js";
import { words } from "../../text/words.js";

/** Cheap hours, rain and the longest run; what lies outside of cheap power, and what was cut of each programme. */
export class LimitsControl extends LitElement {
  static override properties = {
    scene: { attribute: false },
    plans: { attribute: false },
    arms: { attribute: false },
  };
  declare scene: Scene;
  declare plans: readonly ProgrammePlan[];
  /** Of the season as it is set; undefined while it is computed. */
  declare arms: readonly Arm[] | undefined;

  static override styles = css`
    :host { display: block; padding: 0.2rem 0 0.9rem; max-width: 52rem; }
    .fields { display: grid; gap: 0.45rem; justify-items: start; }
    input[type="checkbox"] { width: 1.15em; height: 1.15em; accent-color: var(--ink); vertical-align: -0.15em; margin: 0 0.35em 0 0; }
    input:focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }
    ul { margin: 0.5rem 0 0; padding-left: 1.1em; }
    .dear { font-weight: 650; }
    p { margin: 0.4rem 0 0; }
    .small { font-size: var(--size-small); color: var(--ink-quiet); }
  `;

  override render(): TemplateResult {
    const w = toolsWords();
    const { limits } = this.scene;
    const time = (key: "powerFrom" | "powerTo", label: string) =>
      html`<rl-clock-field .label=${label} .value=${limits[key]} .none=${w.same} @clock-changed=${(e: CustomEvent<string>) => this.#tell({ [key]: e.detail })}></rl-clock-field>`;
    const number = (key: "skipRainMm" | "longestRunMinutes", label: string, decimals: number) =>
      html`<rl-number-field named .label=${label} .value=${limits[key]} .limits=${ends[key]} .decimals=${decimals} .step=${decimals === 0 ? 10 : 1}
        @number-changed=${(e: CustomEvent<number>) => this.#tell({ [key]: decimals === 0 ? Math.round(e.detail) : e.detail })}></rl-number-field>`;
    const windowed = limits.powerFrom !== "" && limits.powerTo !== "";
    return html`
      <div class="fields">
        <span>${time("powerFrom", w.powerFrom)} ${time("powerTo", w.powerTo)}</span>
        ${windowed ? html`<label><input type="checkbox" .checked=${limits.keepToPower} @change=${(e: Event) => this.#tell({ keepToPower: (e.target as HTMLInputElement).checked })}>${w.keep}</label>` : nothing}
        ${number("skipRainMm", w.skip, 1)}${number("longestRunMinutes", w.longest, 0)}
      </div>
      <div role="status">
        ${windowed ? html`<ul>${this.scene.programmes.map((_, i) => this.#power(i))}</ul>` : nothing}
        ${this.#cuts()}
      </div>`;
  }

  #power(i: number): TemplateResult {
    const w = toolsWords();
    const { limits, programmes } = this.scene;
    const letter = "ABCD"[i]!;
    if (programmes[i]!.rule !== "calendar") return html`<li>${w.unknownHours(letter)}</li>`;
    const found = dearHours(programmes[i]!, this.plans[i]!, limits);
    if (found === undefined || found.dearH < 1 / 60) return html`<li>${w.cheap(letter)}</li>`;
    const window = `${limits.powerFrom}–${limits.powerTo}`;
    return html`<li class="dear">${w.dear(letter, hoursText(found.dearH), hoursText(found.openH), window)}</li>`;
  }

  #cuts(): TemplateResult | typeof nothing {
    const w = toolsWords();
    const { limits, programmes, soils } = this.scene;
    const decided = programmes.some(({ rule }) => rule !== "calendar");
    if (!(decided || limits.keepToPower || limits.skipRainMm > 0 || limits.longestRunMinutes > 0)) return nothing;
    if (this.arms === undefined) return html`<p class="small">${w.waiting}</p>`;
    const rows = this.arms.flatMap(({ result: { watering } }, at) => {
      if (watering === undefined) return [];
      const soil = soils[Math.floor(at / programmes.length)]!;
      const of = cutCounts(watering.cuts).map(({ reason, runs, minutes }) =>
        w.cut(reason, runs, hoursText(minutes / 60)),
      );
      const head = w.cuts(
        "ABCD"[at % programmes.length]!,
        words.soil.name(soil.texture, soil.structure),
        hoursText(watering.askedMinutes / 60),
        hoursText(watering.givenMinutes / 60),
      );
      return [html`<li>${head}: ${of.length === 0 ? w.uncut : of.join("; ")}.</li>`];
    });
    return html`<ul class="cuts">${rows}</ul>`;
  }

  #tell(change: Partial<PumpScene>): void {
    const detail = (scene: Scene): Scene => ({ ...scene, limits: { ...scene.limits, ...change } });
    this.dispatchEvent(new CustomEvent("scene-edited", { detail, bubbles: true, composed: true }));
  }
}

/** @example hoursText(2.5) // "2 h 30 min" */
function hoursText(hours: number): string {
  const minutes = Math.round(hours * 60);
  if (minutes >= 6000) return `${amount(hours, 4)} h`;
  const rest = minutes % 60;
  return [minutes >= 60 ? `${Math.floor(minutes / 60)} h` : "", rest > 0 || minutes < 60 ? `${rest} min` : ""]
    .filter((part) => part !== "")
    .join(" ");
}

customElements.define("rl-limits-control", LimitsControl);
