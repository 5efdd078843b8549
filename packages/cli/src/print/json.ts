/** JSON at full precision; typed arrays become lists, a value that is not finite becomes null. */
export function jsonText(value: unknown): string {
  return `${JSON.stringify(value, (_, entry: unknown) => (ArrayBuffer.isView(entry) ? Array.from(entry as Float64Array) : entry))}\n`;
}
