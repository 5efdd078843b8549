import type { Convergence, Fineness } from "rootledger/compare";
import { convergenceWords as words } from "../words-convergence.js";
import { textTable, wrapped } from "./text-table.js";

/** A table for each soil and programme, then what flips and what step is safe. */
export function convergenceText(
  name: string,
  { finenesses, rows, flips, safeThetaChangePerStep, layersFine }: Convergence,
): string {
  const finer = finenesses.slice(1).map((fineness) => finenessText(fineness));
  const arms = [...new Set(rows.map(({ soil, programme }) => `${soil}: ${programme}`))];
  const tables = arms.map((arm) => {
    const lines = rows
      .filter(({ soil, programme }) => `${soil}: ${programme}` === arm)
      .map(({ measureId, usual, changes, floor }) => [
        words.measure[measureId],
        ...[usual, ...changes.slice(1), floor].map((value) => value.toFixed(2)),
      ]);
    return `\n${textTable("", [], [[arm, words.usual, ...finer, words.floor], ...lines])}`;
  });
  const turned = flips.map(({ soil, from, to, measureId, fineness, usual, finer: now }) =>
    wrapped(`${soil}, ${from} -> ${to}, ${measureId}: ${usual}; ${finenessText(fineness)}: ${now}`, "    ", "  "),
  );
  return [
    wrapped(`${name}: ${words.what}`),
    ...tables,
    `\n${turned.length === 0 ? wrapped(words.noFlips) : `${wrapped(words.flips)}${turned.join("")}`}`,
    wrapped(safeThetaChangePerStep === undefined ? words.noSafe : words.safe(safeThetaChangePerStep)),
    wrapped(layersFine ? words.layersFine : words.layersCoarse),
  ].join("");
}

const finenessText = ({ thetaDoubtPerStep, layerParts }: Fineness): string =>
  layerParts === 1 ? `${words.step} ${thetaDoubtPerStep}` : `${thetaDoubtPerStep}, ${words.halfLayers}`;
