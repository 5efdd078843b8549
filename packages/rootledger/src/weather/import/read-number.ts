/** How a file writes numbers. */
export interface NumberStyle {
  readonly decimal: "." | ",";
  /** Between groups of three digits; "" where it has none. */
  readonly thousands: "" | "." | "," | " " | "'";
}

/**
 * A number as the file writes it, NaN where the text is none. Read from the digits themselves: up to fifteen of them and twenty-two decimals
 * give the nearest double exactly; longer ones go through Number.
 *
 * @example readNumber("1.234,5", { decimal: ",", thousands: "." }) // 1234.5
 */
export function readNumber(text: string, style: NumberStyle): number {
  const decimalCode = style.decimal === "." ? 0x2e : 0x2c;
  const value = plainNumber(text, 0, text.length, decimalCode);
  if (!Number.isNaN(value) || text.length === 0 || text.length > 40) return value;
  const grouped = style.thousands === "" ? undefined : withoutThousands(text.trim(), style);
  if (grouped !== undefined) return plainNumber(grouped, 0, grouped.length, decimalCode);
  const first = text.trim().charCodeAt(0);
  if (first !== 0x2212 && first !== 0x2013) return Number.NaN;
  // A typographic minus sign.
  const signed = `-${text.trim().slice(1)}`;
  return plainNumber(signed, 0, signed.length, decimalCode);
}

const isDigit = (code: number): boolean => code >= 0x30 && code <= 0x39;

/** A number without thousands between two places of a text; NaN where anything else stands there. */
export function plainNumber(text: string, from: number, to: number, decimalCode: number): number {
  let i = from;
  let end = to;
  while (i < end && text.charCodeAt(i) <= 0x20) i++;
  while (end > i && text.charCodeAt(end - 1) <= 0x20) end--;
  if (i === end || end - i > 40) return Number.NaN;
  const start = i;
  const sign = text.charCodeAt(i);
  if (sign === 0x2d || sign === 0x2b) i++;
  let mantissa = 0;
  let digits = 0;
  let decimals = 0;
  let seenDecimal = false;
  for (; i < end; i++) {
    const code = text.charCodeAt(i);
    if (isDigit(code)) {
      mantissa = mantissa * 10 + (code - 0x30);
      digits++;
      if (seenDecimal) decimals++;
    } else if (code === decimalCode && !seenDecimal) seenDecimal = true;
    else if ((code === 0x65 || code === 0x45) && digits > 0) return exponential(text.slice(start, end), decimalCode);
    else return Number.NaN;
  }
  if (digits === 0) return Number.NaN;
  if (digits > 15) return Number(text.slice(start, end).replace(",", "."));
  const size = decimals === 0 ? mantissa : mantissa / powersOfTen[decimals];
  return sign === 0x2d && size !== 0 ? -size : size;
}

const powersOfTen: readonly number[] = Array.from({ length: 23 }, (_, n) => Number(`1e${n}`));

function exponential(text: string, decimalCode: number): number {
  if (!/^[+-]?(\d+[.,]?\d*|[.,]\d+)[eE][+-]?\d{1,3}$/.test(text)) return Number.NaN;
  if (text.includes(decimalCode === 0x2e ? "," : ".")) return Number.NaN;
  const value = Number(text.replace(",", "."));
  return Number.isFinite(value) ? value : Number.NaN;
}

/** Digits without the marks between groups of three; undefined where the groups are not right. */
function withoutThousands(text: string, { decimal, thousands }: NumberStyle): string | undefined {
  const at = text.indexOf(decimal);
  const whole = at < 0 ? text : text.slice(0, at);
  const groups = (thousands === " " ? whole.replace(/[\u00a0\u202f\u2009]/g, " ") : whole).split(thousands);
  if (
    groups.length < 2 ||
    !/^[+-]?\d{1,3}$/.test(groups[0]) ||
    !groups.slice(1).every((group) => /^\d{3}$/.test(group))
  )
    return undefined;
  return groups.join("") + (at < 0 ? "" : text.slice(at));
}
