import { svg, type TemplateResult } from "lit";
import type { ArmPicture } from "./arm-picture.js";
import type { SectionFrame } from "./geometry/section-frame.js";

const trunkHalfCm = 9;

/** What stands above the ground: canopy and trunk as outlines, the driplines, and the rain of the hour. */
export function sectionScenery(arm: ArmPicture, frame: SectionFrame, row: number, em: number): TemplateResult {
  const open = arm.valveOpen[row]! > 0;
  const lines = [...new Set(Array.from(arm.section.lineAtCm).flatMap((at) => [at, -at]))];
  const y = frame.skyHeight - em * 0.28;
  return svg`
    <path class="outline" d=${canopyPath(arm, frame, em)}></path>
    <path class="leaf" d=${trunkPath(frame, em)}></path>
    ${arm.rainMm[row]! > 0 ? rainDrops(frame, em) : svg``}
    ${lines.map(
      (at) => svg`
        <circle class=${open ? "line-open" : "line-shut"} cx=${frame.x(at)} cy=${y} r=${em * 0.27}></circle>
        ${open ? svg`<path class="line-open" d=${drop(frame.x(at), frame.skyHeight + em * 0.2, em * 0.2)}></path>` : svg``}
      `,
    )}
  `;
}

/** The underside of the canopy as a row of small arcs. */
function canopyPath(arm: ArmPicture, frame: SectionFrame, em: number): string {
  const half = (arm.canopyDiameterM * 100) / 2;
  const reach = Math.min(half, frame.halfWidthCm);
  const arcs = 18;
  const edge = (i: number): [number, number] => {
    const cm = -reach + (2 * reach * i) / arcs;
    const lift = Math.sqrt(Math.max(0, 1 - (cm / half) ** 2));
    return [frame.x(cm), frame.skyHeight - em * (1.15 + 1.15 * lift)];
  };
  let path = `M${edge(0).join(" ")}`;
  for (let i = 1; i <= arcs; i++) {
    const [x0] = edge(i - 1);
    const [x1, y1] = edge(i);
    path += `Q${(x0 + x1) / 2} ${y1 + em * 0.42} ${x1} ${y1}`;
  }
  return path;
}

function trunkPath(frame: SectionFrame, em: number): string {
  const foot = trunkHalfCm * 1.5 * frame.scale;
  const top = trunkHalfCm * 0.8 * frame.scale;
  const x = frame.x(0);
  const y = frame.skyHeight;
  const up = y - em * 2.15;
  return `M${x - foot} ${y}C${x - top} ${y - em * 0.6} ${x - top} ${y - em} ${x - top * 1.3} ${up}M${x + foot} ${y}C${x + top} ${y - em * 0.6} ${x + top} ${y - em} ${x + top * 1.3} ${up}`;
}

function rainDrops(frame: SectionFrame, em: number): TemplateResult {
  const drops = Array.from({ length: 9 }, (_, i): [number, number] => [
    frame.left + frame.width * ((i + 0.5) / 9),
    em * (0.7 + 0.5 * ((i * 7) % 3)),
  ]);
  return svg`${drops.map(([x, y]) => svg`<path class="rain" d=${drop(x, y, em * 0.22)}></path>`)}`;
}

/** A drop with its point up, centred on its round part. */
const drop = (x: number, y: number, r: number): string =>
  `M${x} ${y - r * 2}C${x + r * 0.4} ${y - r} ${x + r} ${y - r * 0.4} ${x + r} ${y}A${r} ${r} 0 1 1 ${x - r} ${y}C${x - r} ${y - r * 0.4} ${x - r * 0.4} ${y - r} ${x} ${y - r * 2}Z`;
