import { html, type TemplateResult } from "lit";
import { classWords } from "../../text/class-words.js";
import { amount } from "../../text/number-format.js";

/** Water held between 8 and 20 kPa, mm per m of soil: Agriculture Victoria, How to determine readily available water, table 1; also NSW Primefact 1362 (2014). */
const heldMmPerM = {
  sand: 33,
  "loamy sand": 45,
  "sandy loam": 46,
  "sandy clay loam": 39,
  "clay loam": 30,
  clay: 37,
} as const;

/** Roots of 30 cm; a third of the 24 m2 of a tree is wetted: the sum of the sheet. */
const rootedM = 0.3;
const wettedM2 = 24 / 3;

/** Pan of 7 mm, Kp 0.7, Kc 0.8; 15 m2 covered to 80 %: Peruvian avocado manual, worked example. */
const pan = { lossMm: 7, kp: 0.7, kc: 0.8, groundM2: 15, cover: 0.8 };

/** Citrus of 9 m2 in January: Western Australia agriculture department, citrus irrigation recommendations; 70 mm/m is what its 189 L come to. */
const runs = { needL: 62.5, canopyM2: 9, rootedM: 0.3, heldMmPerM: 70, dripperL: 34 };

/** Sums that the class works out, with answers that others have printed; blank, or worked for the trainer. */
export function handoutSums(withKey: boolean): TemplateResult {
  const w = classWords();
  const filled = (value: number, unit: string, digits = 3): TemplateResult =>
    withKey
      ? html`<strong class="key">${amount(value, digits)} ${unit}</strong>`
      : html`<span class="blank"></span> ${unit}`;
  const depthMm = pan.lossMm * pan.kp * pan.kc;
  const heldL = runs.canopyM2 * runs.rootedM * runs.heldMmPerM;
  return html`<h2>${w.sumsHeading}</h2><ol class="sums">
    <li><h3>${w.panTitle}</h3><p>${w.panGiven}</p>
      <p>${w.panDepth} ${filled(depthMm, w.millimetres)}</p>
      <p>${w.panLitres} ${filled(depthMm * pan.groundM2 * pan.cover, w.litres, 2)}</p>${source(w.panSource)}</li>
    <li><h3>${w.runsTitle}</h3><p>${w.runsGiven}</p>
      <p>${w.runsHeld} ${filled(heldL, w.litres)}</p>
      <p>${w.runsDrippers} ${filled(Math.ceil(runs.needL / runs.dripperL), w.runsADay)}</p>
      <p>${w.runsSprinkler} ${filled(Math.floor(heldL / runs.needL), w.daysApart)}</p>${source(w.runsSource)}</li>
    <li><h3>${w.windowTitle}</h3><p>${w.windowGiven}</p>
      <table><thead><tr>${w.windowHead.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
      <tbody>${Object.entries(heldMmPerM).map(([soil, held]) => html`<tr><th scope="row">${w.soils[soil as keyof typeof heldMmPerM]}</th><td>${amount(held)}</td><td>${filled(held * rootedM, w.millimetres)}</td><td>${filled(held * rootedM * wettedM2, w.litres)}</td></tr>`)}</tbody></table>
      ${withKey ? html`<p class="key">${w.windowAnswer}</p>` : html`<p class="line"></p>`}${source(w.windowSource)}</li>
  </ol>`;
}

const source = (text: string): TemplateResult => html`<p class="small">${text}</p>`;
