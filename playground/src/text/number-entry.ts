import { locale } from "./locale.js";

/** A typed number, with a point or a comma before its decimals; undefined for anything else. @example numberIn("1,6") // 1.6 */
export function numberIn(text: string): number | undefined {
  const plain = text.trim().replace(",", ".").replace("\u2212", "-");
  return /^-?\d{1,9}(\.\d*)?$|^-?\.\d+$/.test(plain) ? Number(plain) : undefined;
}

/** A number as one would type it in the page's language, nothing where there is none yet. @example numberText(1.6, 2) // "1.6" */
export function numberText(value: number, decimals: number): string {
  if (Number.isNaN(value)) return "";
  const text = String(Number(value.toFixed(decimals)));
  return locale.startsWith("es") ? text.replace(".", ",") : text;
}
