function tile(size: number): { canvas: HTMLCanvasElement; context: CanvasRenderingContext2D } {
  const canvas = document.createElement("canvas");
  canvas.width = size;
  canvas.height = size;
  return { canvas, context: canvas.getContext("2d")! };
}

/** Tile of crossing lines, each with a halo so that it is seen on any ground. */
export function crossHatch(colour: string, halo: string, em: number, density: number): HTMLCanvasElement {
  const size = Math.round(em * 0.62 * density);
  const { canvas, context } = tile(size);
  context.lineCap = "square";
  for (const [stroke, width] of [
    [halo, 0.1],
    [colour, 0.06],
  ] as const) {
    context.strokeStyle = stroke;
    context.lineWidth = em * width * density;
    context.beginPath();
    for (const shift of [-size, 0, size]) {
      context.moveTo(shift, 0);
      context.lineTo(shift + size, size);
      context.moveTo(shift + size, 0);
      context.lineTo(shift, size);
    }
    context.stroke();
  }
  return canvas;
}

/** Tile of dots, each with a halo. */
export function dots(colour: string, halo: string, em: number, density: number): HTMLCanvasElement {
  const size = Math.round(em * 0.72 * density);
  const { canvas, context } = tile(size);
  for (const [x, y] of [
    [0.25, 0.25],
    [0.75, 0.75],
  ] as const) {
    for (const [fill, radius] of [
      [halo, 0.15],
      [colour, 0.115],
    ] as const) {
      context.fillStyle = fill;
      context.beginPath();
      context.arc(x * size, y * size, em * radius * density, 0, 2 * Math.PI);
      context.fill();
    }
  }
  return canvas;
}
