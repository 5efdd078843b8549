import { type ArmPicture, cellState } from "./arm-picture.js";
import { crossHatch, dots } from "./canvas-patterns.js";
import { type CellField, cellField } from "./geometry/cell-field.js";
import { rootStrokes, type Stroke } from "./geometry/root-strokes.js";
import type { SectionFrame } from "./geometry/section-frame.js";
import { waterColours, waterStep } from "./geometry/water-scale.js";

/** Colours of the picture as the theme has them at the moment. */
export interface SoilColours {
  readonly dry: string;
  readonly middle: string;
  readonly full: string;
  readonly halo: string;
  readonly thirsty: string;
  readonly airless: string;
  readonly root: string;
}

/** Water content from which the ground is dark enough for pale strokes, m3/m3; read off the colour scale. */
const paleFromTheta = 0.3;

const columns = 72;
const rows = 56;

/** Paints one soil: water as colour, roots as strokes, airless and thirsty cells as patterns. Made once per picture. */
export class SoilPainter {
  readonly #arm: ArmPicture;
  readonly #frame: SectionFrame;
  readonly #field: CellField;
  readonly #strokes: readonly Stroke[];
  readonly #lut: Uint8ClampedArray;
  readonly #pixels = new ImageData(columns * 2, rows);
  readonly #small = document.createElement("canvas");
  readonly #colours: SoilColours;
  readonly #em: number;
  #patterns: { airless: CanvasPattern; thirsty: CanvasPattern; density: number } | undefined;
  /** Which strokes are pale now, and the two paths they make. */
  #pale: readonly boolean[] = [];
  #onDry = new Path2D();
  #onWet = new Path2D();

  constructor(arm: ArmPicture, frame: SectionFrame, colours: SoilColours, em: number) {
    this.#arm = arm;
    this.#frame = frame;
    this.#colours = colours;
    this.#em = em;
    this.#field = cellField(arm.section, frame.halfWidthCm, columns, rows);
    this.#strokes = rootStrokes(arm.section, frame);
    this.#lut = waterColours(colours.dry, colours.middle, colours.full);
    this.#small.width = columns * 2;
    this.#small.height = rows;
  }

  /** Draws one hour onto a canvas of the soil's size, in device pixels. */
  paint(canvas: HTMLCanvasElement, row: number, density: number): void {
    const { width, soilHeight } = this.#frame;
    const context = canvas.getContext("2d")!;
    const size = [Math.round(width * density), Math.round(soilHeight * density)] as const;
    if (canvas.width !== size[0] || canvas.height !== size[1]) [canvas.width, canvas.height] = size;
    context.setTransform(1, 0, 0, 1, 0, 0);
    this.#paintWater(context, row, canvas);
    context.scale(density, density);
    context.translate(-this.#frame.left, -this.#frame.skyHeight);
    this.#paintRoots(context, row);
    this.#paintStates(context, row, density);
  }

  #paintWater(context: CanvasRenderingContext2D, row: number, canvas: HTMLCanvasElement): void {
    const { cells, weights } = this.#field;
    const { theta, section } = this.#arm;
    const at = row * section.layers * section.lanes;
    const data = this.#pixels.data;
    for (let r = 0, k = 0; r < rows; r++) {
      for (let c = 0; c < columns; c++, k += 4) {
        const mixed =
          theta[at + cells[k]!]! * weights[k]! +
          theta[at + cells[k + 1]!]! * weights[k + 1]! +
          theta[at + cells[k + 2]!]! * weights[k + 2]! +
          theta[at + cells[k + 3]!]! * weights[k + 3]!;
        const colour = waterStep(mixed) * 3;
        for (const pixel of [(r * 2 * columns + columns + c) * 4, (r * 2 * columns + columns - 1 - c) * 4]) {
          data[pixel] = this.#lut[colour]!;
          data[pixel + 1] = this.#lut[colour + 1]!;
          data[pixel + 2] = this.#lut[colour + 2]!;
          data[pixel + 3] = 255;
        }
      }
    }
    this.#small.getContext("2d")!.putImageData(this.#pixels, 0, 0);
    context.imageSmoothingEnabled = true;
    context.imageSmoothingQuality = "high";
    context.drawImage(this.#small, 0, 0, canvas.width, canvas.height);
  }

  #paintStates(context: CanvasRenderingContext2D, row: number, density: number): void {
    const { section, theta } = this.#arm;
    const { lanes, layers, laneEdgesCm, layerEdgesCm } = section;
    const cells = lanes * layers;
    const patterns = this.#patternsFor(context, density);
    for (let cell = 0; cell < cells; cell++) {
      const state = cellState(this.#arm, cell, theta[row * cells + cell]!);
      if (state === "fine") continue;
      context.fillStyle = patterns[state];
      const lane = cell % lanes;
      const layer = Math.floor(cell / lanes);
      const top = this.#frame.y(layerEdgesCm[layer]!);
      const height = this.#frame.y(layerEdgesCm[layer + 1]!) - top;
      const width = (laneEdgesCm[lane + 1]! - laneEdgesCm[lane]!) * this.#frame.scale;
      context.fillRect(this.#frame.x(laneEdgesCm[lane]!), top, width, height);
      context.fillRect(this.#frame.x(-laneEdgesCm[lane + 1]!), top, width, height);
    }
  }

  #patternsFor(context: CanvasRenderingContext2D, density: number): { airless: CanvasPattern; thirsty: CanvasPattern } {
    if (this.#patterns?.density === density) return this.#patterns;
    const { airless, thirsty, halo } = this.#colours;
    const made = (tile: HTMLCanvasElement): CanvasPattern => {
      const pattern = context.createPattern(tile, "repeat")!;
      pattern.setTransform(new DOMMatrix().scale(1 / density));
      return pattern;
    };
    this.#patterns = {
      airless: made(crossHatch(airless, halo, this.#em, density)),
      thirsty: made(dots(thirsty, halo, this.#em, density)),
      density,
    };
    return this.#patterns;
  }

  /** Dark strokes on dry ground, pale ones on wet, so that roots are seen in both. */
  #paintRoots(context: CanvasRenderingContext2D, row: number): void {
    const { theta, section } = this.#arm;
    const at = row * section.layers * section.lanes;
    const pale = this.#strokes.map(({ cell }) => theta[at + cell]! >= paleFromTheta);
    if (pale.some((isPale, i) => isPale !== this.#pale[i])) {
      this.#pale = pale;
      this.#onDry = pathOf(this.#strokes.filter((_, i) => !pale[i]));
      this.#onWet = pathOf(this.#strokes.filter((_, i) => pale[i]));
    }
    context.lineCap = "round";
    context.lineWidth = this.#em * 0.048;
    context.strokeStyle = this.#colours.root;
    context.stroke(this.#onDry);
    context.strokeStyle = this.#colours.halo;
    context.globalAlpha = 0.7;
    context.stroke(this.#onWet);
    context.globalAlpha = 1;
  }
}

function pathOf(strokes: readonly Stroke[]): Path2D {
  const path = new Path2D();
  for (const { start, bend, end } of strokes) {
    path.moveTo(...start);
    path.quadraticCurveTo(...bend, ...end);
  }
  return path;
}
