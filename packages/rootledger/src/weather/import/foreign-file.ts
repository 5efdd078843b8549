/** Files that are not text, by their first bytes. Sources: ZIP APPNOTE 4.3.7, RFC 1952 2.3.1, MS-CFB 2.2, ISO 32000-1 7.5.2. */
const signatures: readonly { readonly bytes: readonly number[]; readonly what: string }[] = [
  { bytes: [0x50, 0x4b, 0x03, 0x04], what: "a zip archive or a spreadsheet (xlsx, ods)" },
  { bytes: [0xd0, 0xcf, 0x11, 0xe0], what: "an old spreadsheet or document (xls, doc)" },
  { bytes: [0x1f, 0x8b], what: "a gzip archive" },
  { bytes: [0x25, 0x50, 0x44, 0x46], what: "a PDF document" },
];

/** What a file is that holds no text; undefined for text. @example foreignFile(new Uint8Array([0x1f, 0x8b, 8])) // "a gzip archive" */
export function foreignFile(bytes: Uint8Array): string | undefined {
  const known = signatures.find(({ bytes: first }) => first.every((byte, i) => bytes[i] === byte));
  if (known !== undefined) return known.what;
  const looked = bytes.length < 4000 ? bytes.length : 4000;
  let controls = 0;
  for (let i = 0; i < looked; i++) {
    const byte = bytes[i];
    if (byte < 0x20 && byte !== 0x09 && byte !== 0x0a && byte !== 0x0d && byte !== 0x0c && byte !== 0x1a && byte !== 0)
      controls++;
  }
  return controls > 0.05 * looked ? "not text" : undefined;
}
