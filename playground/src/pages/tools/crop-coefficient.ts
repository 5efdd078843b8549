import type { CropPreset } from "rootledger/tree";

/** Kc of a crop in a month, 0 for January: a card by month of this hemisphere where one was printed, else the middle of the season. */
export function cropCoefficient(
  { otherKc, kc }: Pick<CropPreset, "otherKc" | "kc">,
  month: number,
  south: boolean,
): { readonly kc: number; readonly source: string } {
  const card = otherKc.find(({ hemisphere }) => hemisphere === (south ? "south" : "north"));
  if (card !== undefined) return { kc: card.kcFromJanuary[month]!, source: card.source };
  return { kc: kc.middle.value, source: kc.middle.source };
}
