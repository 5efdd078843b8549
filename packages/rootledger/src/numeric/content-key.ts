/**
 * A key that changes with the content of plain data: 64 bits as 16 hexadecimal digits, from the text of the data with the fields of
 * every object in the order of their names. Two FNV-1a sums of 32 bits (Fowler, Noll & Vo; offset basis 2166136261, prime
 * 16777619, from memory), the second from the far end of the text. For caches, not against forgers.
 *
 * @example contentKey({ a: 1, b: 2 }) === contentKey({ b: 2, a: 1 }) // true
 */
export function contentKey(data: unknown): string {
  const text = JSON.stringify(data, inOrder);
  let forward = 2166136261;
  let backward = 2166136261;
  for (let i = 0; i < text.length; i++) {
    forward = Math.imul(forward ^ text.charCodeAt(i), 16777619);
    backward = Math.imul(backward ^ text.charCodeAt(text.length - 1 - i), 16777619);
  }
  return [forward, backward].map((sum) => (sum >>> 0).toString(16).padStart(8, "0")).join("");
}

function inOrder(_key: string, value: unknown): unknown {
  if (ArrayBuffer.isView(value)) return Array.from(value as Float64Array);
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}
