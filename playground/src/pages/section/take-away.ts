import { type Result, version } from "rootledger";

/** Offers a file of the page's own making to the person. */
export function takeAway(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** Hours of one tree as comma-separated values with point decimals at full precision; the first line names the version. */
export function hoursCsv(result: Result, tree: number): Blob {
  const { columns, rows, trees } = result.hours;
  const head = ["hour", ...columns.map(({ name, unit }) => `${name} (${unit})`)];
  const lines = Array.from({ length: rows }, (_, row) =>
    [row, ...columns.map(({ values }) => values[row * trees + tree]!)].join(","),
  );
  const about = `# rootledger ${version}; ${result.soilName}; ${result.programmeName}; from ${result.startDate}`;
  return new Blob([[about, head.join(","), ...lines].join("\n"), "\n"], { type: "text/csv" });
}

const keptStyles = [
  "fill",
  "stroke",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linecap",
  "stroke-linejoin",
  "font-size",
  "font-weight",
  "font-family",
  "paint-order",
  "opacity",
];

/** A drawing with its styles written into it, so that it looks the same anywhere. */
export function standingSvg(drawing: SVGElement): string {
  const copy = drawing.cloneNode(true) as SVGElement;
  const from = [drawing, ...drawing.querySelectorAll("*")];
  const to = [copy, ...copy.querySelectorAll("*")];
  from.forEach((element, i) => {
    const style = getComputedStyle(element);
    for (const name of keptStyles) to[i]!.setAttribute(name, style.getPropertyValue(name));
    to[i]!.removeAttribute("class");
  });
  copy.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  const paper = getComputedStyle(document.body).backgroundColor;
  const ground = document.createElementNS("http://www.w3.org/2000/svg", "rect");
  for (const [name, value] of Object.entries({ width: "100%", height: "100%", fill: paper }))
    ground.setAttribute(name, value);
  copy.prepend(ground);
  copy.prepend(
    Object.assign(document.createElementNS("http://www.w3.org/2000/svg", "desc"), {
      textContent: `rootledger ${version}`,
    }),
  );
  return new XMLSerializer().serializeToString(copy);
}

/** A painted canvas and the drawing that lies over it, as one picture. */
export async function flattened(canvas: HTMLCanvasElement, drawing: SVGSVGElement): Promise<Blob> {
  const scale = 2;
  const { width, height } = drawing.getBoundingClientRect();
  const out = document.createElement("canvas");
  out.width = Math.round(width * scale);
  out.height = Math.round(height * scale);
  const context = out.getContext("2d")!;
  context.fillStyle = getComputedStyle(document.body).backgroundColor;
  context.fillRect(0, 0, out.width, out.height);
  context.scale(scale, scale);
  const place = canvas.getBoundingClientRect();
  const at = drawing.getBoundingClientRect();
  context.drawImage(canvas, place.left - at.left, place.top - at.top, place.width, place.height);
  const address = URL.createObjectURL(new Blob([withoutGround(standingSvg(drawing))], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    context.drawImage(image, 0, 0, width, height);
  } finally {
    URL.revokeObjectURL(address);
  }
  return new Promise((resolve, reject) => {
    out.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("the picture could not be made"))), "image/png");
  });
}

const withoutGround = (text: string): string => text.replace(/<rect width="100%"[^>]*\/?>(<\/rect>)?/, "");
