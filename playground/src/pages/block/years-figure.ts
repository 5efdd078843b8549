import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import { type YearOfPlan, yearsPlan } from "rootledger/advise";
import { type CanopyPoint, cropPresets } from "rootledger/tree";
import "../../charts/age-stairs.js";
import "../../charts/number-table.js";
import { limits } from "../../fields/limits.js";
import "../../fields/number-field.js";
import { lineOffsetsM } from "../../state/block-file.js";
import type { DemoFile } from "../../state/demo.js";
import type { Scene } from "../../state/scene.js";
import { locale } from "../../text/locale.js";
import { amount, whole } from "../../text/number-format.js";
import { bare } from "../../text/quantity.js";
import { yearsWords } from "../../text/years-words.js";
import { pageStyles } from "../page-styles.js";
import { cropCoefficient } from "../tools/crop-coefficient.js";

const shownAges = [0, 1, 2, 3, 5, 8, 10];
/** Ages at which the next opening is looked for, years. */
const step = 0.25;
const lastAge = 12;
/** Reference demand of a warm day, mm, until another is typed: only the scale of the stairs depends on it. Our choice. */
const warmDayEt0Mm = 6;
/** Roots as wide as the canopy: our choice, no source; dig. */
const rootsPerCanopy = 1;
const msPerYear = 365.25 * 86_400_000;

/** Litres, open emitters and hours of a block that grows up, and when to open more. */
export class YearsFigure extends LitElement {
  static override properties = {
    scene: { attribute: false },
    file: { attribute: false },
    openNow: { type: Number },
    ageYears: { state: true },
  };
  declare scene: Scene;
  declare file: DemoFile;
  /** Emitters of a tree that are open now. */
  declare openNow: number;
  /** Typed age; undefined: that at which a tree has this canopy. */
  declare ageYears: number | undefined;

  static override styles = [
    pageStyles,
    css`
      h2 { font-size: var(--size-body); font-weight: 650; margin: 0 0 0.4rem; text-wrap: balance; }
      .fields { display: flex; flex-wrap: wrap; gap: 0.4rem 1.4rem; margin: 0.4rem 0; }
      p { max-width: 46rem; }
    `,
  ];

  override render(): TemplateResult | typeof nothing {
    const { scene, openNow } = this;
    if (!scene) return nothing;
    const w = yearsWords();
    const { canopy } = cropPresets[scene.need.crop];
    const now = this.ageYears ?? ageOf(canopy, scene.block.canopyDiameterM);
    const years = this.#plan(shownAges, canopy);
    const finer = this.#plan(
      Array.from({ length: (lastAge - now) / step }, (_, i) => now + i * step),
      canopy,
    );
    const next = finer.find(({ plug }) => plug.openPerTree > openNow);
    const all = years[0]!.open.length;
    const steps = years.map(({ ageYears, peak, plug }) => ({
      ageYears,
      litres: peak.meanDay.grossLPerTree,
      open: plug.openPerTree,
      all,
    }));
    const table = () => ({
      caption: w.table,
      head: w.head(),
      rows: years.map(({ ageYears, canopyDiameterM, peak, plug, hoursOnHotDay }) => [
        amount(ageYears),
        amount(canopyDiameterM, 2),
        bare("water", peak.meanDay.grossLPerTree),
        w.open(plug.openPerTree, all),
        whole(plug.usefulShare * 100),
        amount(hoursOnHotDay, 2),
      ]),
    });
    const enough = finer[0]?.plug.openPerTree ?? all;
    const title =
      openNow > enough
        ? w.tooMany(openNow, enough)
        : next === undefined || openNow >= all
          ? w.full
          : w.title(openNow, all, next.ageYears, this.#date(next.ageYears - now));
    return html`<figure><h2>${title}</h2>
      <div class="fields">
        <rl-number-field named .label=${w.age} .value=${now} .limits=${[0, lastAge - step]} .decimals=${1} .step=${0.5} @number-changed=${(e: CustomEvent<number>) => (this.ageYears = e.detail)}></rl-number-field>
        <rl-number-field named .label=${w.et0} .value=${this.#et0Mm} .limits=${limits.et0Mm} .decimals=${1} .step=${0.1}
          @number-changed=${(e: CustomEvent<number>) => this.#tell(e.detail)}></rl-number-field>
      </div>
      <rl-age-stairs .steps=${steps} .nowYears=${now}></rl-age-stairs>
      <p class="small">${w.what()}</p>
      <rl-number-table .data=${table}></rl-number-table></figure>`;
  }

  get #et0Mm(): number {
    const { et0Mm } = this.scene.need;
    return et0Mm > 0 ? et0Mm : warmDayEt0Mm;
  }

  #plan(agesYears: readonly number[], canopy: readonly CanopyPoint[]): readonly YearOfPlan[] {
    const { block, programmes, shown, need } = this.scene;
    const { treeSpacingM, rowSpacingM, emitterSpacingM } = block;
    const south = this.file.weather.latitudeDeg < 0;
    const own = cropCoefficient(cropPresets[need.crop], south ? 0 : 6, south);
    const { years } = yearsPlan({
      layout: { offsetsM: lineOffsetsM(block.lines, block.lineDistanceM), treeSpacingM, rowSpacingM, emitterSpacingM },
      emitterFlowLPerH: programmes[shown]!.flowLPerH,
      wettedRadiusM: block.wettedRadiusM,
      pressureCompensating: block.compensating,
      ...(block.sectorTrees > 0
        ? { sector: { trees: block.sectorTrees, smallestFlowLPerH: block.smallestFlowLPerH } }
        : {}),
      agesYears,
      canopy,
      rootsPerCanopy,
      need: {
        tree: { spacing: { treeSpacingM, rowSpacingM } },
        cover: { rule: "keller-karmeli" },
        reference: { kind: "et0" },
        periods: [
          { name: "peak", days: 1, referenceMmPerDay: this.#et0Mm, coefficient: need.kc > 0 ? need.kc : own.kc },
        ],
        hotDayRatio: 1,
        efficiencyFraction: need.efficiencyFraction,
        leachingFraction: 0,
      },
      nutrientsGPerMatureTree: {},
    });
    return years;
  }

  /** Month that lies some years after the season's start. */
  #date(years: number): string {
    const at = new Date(Date.parse(`${this.file.season.startDate}T00:00:00Z`) + years * msPerYear);
    return new Intl.DateTimeFormat(locale, { month: "long", year: "numeric", timeZone: "UTC" }).format(at);
  }

  #tell(et0Mm: number): void {
    const detail = (scene: Scene): Scene => ({ ...scene, need: { ...scene.need, et0Mm } });
    this.dispatchEvent(new CustomEvent("scene-edited", { detail, bubbles: true, composed: true }));
  }
}

/** Age at which a tree has this canopy; that of the last point where it is larger. */
function ageOf(canopy: readonly CanopyPoint[], diameterM: number): number {
  const after = canopy.findIndex((point) => point.diameterM >= diameterM);
  if (after === 0) return canopy[0]!.ageYears;
  if (after < 0) return canopy.at(-1)!.ageYears;
  const low = canopy[after - 1]!;
  const high = canopy[after]!;
  const share = (diameterM - low.diameterM) / (high.diameterM - low.diameterM);
  return Math.round((low.ageYears + share * (high.ageYears - low.ageYears)) * 10) / 10;
}

customElements.define("rl-years-figure", YearsFigure);
