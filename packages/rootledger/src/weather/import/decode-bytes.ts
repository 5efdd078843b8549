import type { Encoding } from "./encoding.js";

/** Windows-1252 from 0x80 on; the five bytes it leaves undefined stay what they are. Source: WHATWG Encoding, index windows-1252. */
const windows1252 =
  "\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178";

const chunk = 8192;
const replacement = 0xfffd;

/** The text of a file. A byte that its encoding does not allow becomes U+FFFD. @example decodeBytes(new Uint8Array([0xb0, 0x43]), { name: "latin-1", markBytes: 0 }) // "°C" */
export function decodeBytes(bytes: Uint8Array, { name, markBytes }: Encoding): string {
  const body = bytes.subarray(markBytes);
  if (name === "utf-8") return decodeUtf8(body);
  if (name === "utf-16le" || name === "utf-16be") return decodeUtf16(body, name === "utf-16le" ? 0 : 1);
  const codes = new Uint16Array(chunk);
  const special = name === "windows-1252";
  let text = "";
  for (let from = 0; from < body.length; from += chunk) {
    const length = body.length - from < chunk ? body.length - from : chunk;
    for (let i = 0; i < length; i++) {
      const byte = body[from + i];
      codes[i] = special && byte >= 0x80 && byte < 0xa0 ? windows1252.charCodeAt(byte - 0x80) : byte;
    }
    text += textOf(codes, length);
  }
  return text;
}

const textOf = (codes: Uint16Array, length: number): string =>
  String.fromCharCode.apply(undefined, codes.subarray(0, length) as unknown as number[]);

function decodeUtf16(bytes: Uint8Array, low: 0 | 1): string {
  const codes = new Uint16Array(chunk);
  let text = "";
  let used = 0;
  for (let i = 0; i + 1 < bytes.length; i += 2) {
    codes[used++] = bytes[i + low] | (bytes[i + 1 - low] << 8);
    if (used < chunk) continue;
    text += textOf(codes, used);
    used = 0;
  }
  return text + textOf(codes, used);
}

function decodeUtf8(bytes: Uint8Array): string {
  const codes = new Uint16Array(chunk);
  let text = "";
  let used = 0;
  let i = 0;
  while (i < bytes.length) {
    const byte = bytes[i];
    const length =
      byte < 0x80 ? 1 : byte >= 0xc2 && byte < 0xe0 ? 2 : byte >= 0xe0 && byte < 0xf0 ? 3 : byte < 0xf5 ? 4 : 1;
    let code = length === 1 ? (byte < 0x80 ? byte : replacement) : byte & (0xff >> (length + 1));
    let good = length === 1 || byte >= 0xc2;
    for (let k = 1; k < length; k++) {
      const next = bytes[i + k];
      if (next === undefined || (next & 0xc0) !== 0x80) good = false;
      code = (code << 6) | (next & 0x3f);
    }
    i += good ? length : 1;
    if (!good || code > 0x10ffff) code = replacement;
    if (code > 0xffff) {
      codes[used++] = 0xd800 + ((code - 0x10000) >> 10);
      code = 0xdc00 + ((code - 0x10000) & 0x3ff);
    }
    codes[used++] = code;
    if (used < chunk - 1) continue;
    text += textOf(codes, used);
    used = 0;
  }
  return text + textOf(codes, used);
}
