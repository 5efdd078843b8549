/** How the bytes of a file were written. "ascii" reads the same in all but the UTF-16 ones. */
export type EncodingName = "ascii" | "utf-8" | "utf-16le" | "utf-16be" | "latin-1" | "windows-1252";

export interface Encoding {
  readonly name: EncodingName;
  /** Bytes of the byte order mark, 0 without one. */
  readonly markBytes: number;
}

/**
 * The encoding of a text file by its byte order mark, else by its bytes: zeros at every second place are UTF-16, sequences
 * that are valid UTF-8 are UTF-8 (RFC 3629), anything else is Windows-1252 where a byte lies in 0x80-0x9F, which Latin-1
 * (ISO 8859-1) leaves to control characters, and Latin-1 where none does: there the two read alike.
 *
 * @example encodingOf(new Uint8Array([0xef, 0xbb, 0xbf, 0x61])) // { name: "utf-8", markBytes: 3 }
 */
export function encodingOf(bytes: Uint8Array): Encoding {
  const [a, b, c] = [bytes[0], bytes[1], bytes[2]];
  if (a === 0xef && b === 0xbb && c === 0xbf) return { name: "utf-8", markBytes: 3 };
  if (a === 0xff && b === 0xfe) return { name: "utf-16le", markBytes: 2 };
  if (a === 0xfe && b === 0xff) return { name: "utf-16be", markBytes: 2 };
  const wide = utf16Of(bytes);
  if (wide !== undefined) return { name: wide, markBytes: 0 };
  return { name: narrowOf(bytes), markBytes: 0 };
}

/** Western text in UTF-16 has a zero in nearly every second byte; no text in another encoding has any. */
function utf16Of(bytes: Uint8Array): "utf-16le" | "utf-16be" | undefined {
  const looked = bytes.length < 2000 ? bytes.length & ~1 : 2000;
  if (looked < 4) return undefined;
  let evenZeros = 0;
  let oddZeros = 0;
  for (let i = 0; i < looked; i += 2) {
    if (bytes[i] === 0) evenZeros++;
    if (bytes[i + 1] === 0) oddZeros++;
  }
  const most = 0.8 * (looked / 2);
  if (oddZeros > most && evenZeros < most / 8) return "utf-16le";
  if (evenZeros > most && oddZeros < most / 8) return "utf-16be";
  return undefined;
}

function narrowOf(bytes: Uint8Array): EncodingName {
  let i = 0;
  while (i < bytes.length && bytes[i] < 0x80) i++;
  if (i === bytes.length) return "ascii";
  let utf8 = true;
  for (; i < bytes.length && utf8; i++) {
    const byte = bytes[i];
    if (byte < 0x80) continue;
    const length = byte >= 0xc2 && byte <= 0xdf ? 1 : (byte & 0xf0) === 0xe0 ? 2 : byte >= 0xf0 && byte <= 0xf4 ? 3 : 0;
    if (length === 0) utf8 = false;
    // A sequence cut off by the end of the file is no fault of the encoding.
    for (let k = 1; k <= length && i + k < bytes.length; k++) if ((bytes[i + k] & 0xc0) !== 0x80) utf8 = false;
    i += length;
  }
  if (utf8) return "utf-8";
  return hasControls(bytes) ? "windows-1252" : "latin-1";
}

function hasControls(bytes: Uint8Array): boolean {
  for (let i = 0; i < bytes.length; i++) if (bytes[i] >= 0x80 && bytes[i] < 0xa0) return true;
  return false;
}
