import { line, scaleLinear } from "d3";
import { blocksOf } from "./blocks.js";
import type { ValidatedStation } from "./validate-station.js";

const widthPx = 1200;
const rowPx = 190;
const leftPx = 48;
/** Black for the probes, and a dark orange that stays apart from it without colour vision by being dashed. */
const ink = { read: "#111", ours: "#b4470f", rain: "#5b7fa6", unseen: "#ececec", rule: "#cfcfcf" };

/** Picture of one station: at each depth what was read and what was predicted; unseen blocks are shaded. */
export function plotStation({ report, record, predicted }: ValidatedStation): string {
  const x = scaleLinear([0, record.days], [leftPx, widthPx - 8]);
  const rows = record.theta.map((read, k) => {
    const values = [...read, ...predicted[k]].filter((t) => !Number.isNaN(t));
    const y = scaleLinear([Math.min(...values) - 0.01, Math.max(...values) + 0.03], [rowPx - 12, 6]);
    const path = line<number>()
      .defined((t) => !Number.isNaN(t))
      .x((_, d) => Math.round(x(d + 0.5) * 10) / 10)
      .y((t) => Math.round(y(t) * 10) / 10);
    const shades = blocksOf(record.days)
      .filter(({ use }) => use === "test")
      .map(({ from, to }) => rect(x(from), 0, x(to) - x(from), rowPx - 8, ink.unseen));
    const rain = Array.from(record.rainMm, (mm, d) => (mm > 0 ? rect(x(d), 0, 2, mm * 0.8, ink.rain) : ""));
    const ticks = y
      .ticks(4)
      .map(
        (t) =>
          `<line x1="${leftPx}" x2="${widthPx - 8}" y1="${y(t)}" y2="${y(t)}" stroke="${ink.rule}"/>` +
          `<text x="${leftPx - 6}" y="${y(t) + 4}" text-anchor="end">${t.toFixed(2)}</text>`,
      );
    return [
      `<g transform="translate(0 ${24 + k * rowPx})">`,
      ...shades,
      ...ticks,
      ...rain,
      `<path d="${path(Array.from(read))}" fill="none" stroke="${ink.read}" stroke-width="1.4"/>`,
      `<path d="${path(Array.from(predicted[k]))}" fill="none" stroke="${ink.ours}" stroke-width="1.8" stroke-dasharray="5 2"/>`,
      `<text x="${leftPx + 6}" y="20">${record.depthsCm[k]} cm: RMSE ${report.rmse[k].toFixed(3)} m3/m3</text>`,
      "</g>",
    ].join("");
  });
  const title = `${report.name}: water content read (line) and predicted (dashed) in unseen 30-day blocks; rain from the top`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthPx} ${24 + rows.length * rowPx}" font-family="sans-serif" font-size="12">` +
    `<title>${title}</title><rect width="100%" height="100%" fill="#fff"/><text x="${leftPx}" y="16">${title}</text>${rows.join("")}</svg>\n`
  );
}

const rect = (x: number, y: number, width: number, height: number, fill: string): string =>
  `<rect x="${x.toFixed(1)}" y="${y}" width="${width.toFixed(1)}" height="${height.toFixed(1)}" fill="${fill}"/>`;
