const blank = /[ \t\n\r]*/y;
const scalar =
  /"(?:[ !#-[\]-\u{10ffff}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])|(?:true|false|null)(?!\w)/uy;

/** What may come next: a value, a value or the end of a list, a key, a key or the end of an object, a colon, what follows a value. */
type Next = "value" | "first value" | "key" | "first key" | "colon" | "after";

/**
 * Place of the first character at which a text stops being JSON (RFC 8259), or undefined if it is JSON. The engine's own
 * message does not always say where.
 *
 * @example jsonFaultAt('{"a": }') // 6
 */
export function jsonFaultAt(text: string): number | undefined {
  const open: ("[" | "{")[] = [];
  let next: Next = "value";
  let at = 0;
  const matchAt = (pattern: RegExp): string => {
    pattern.lastIndex = at;
    return pattern.exec(text)?.[0] ?? "";
  };
  for (;;) {
    at += matchAt(blank).length;
    if (at >= text.length) return next === "after" && open.length === 0 ? undefined : at;
    const character = text[at] ?? "";
    const inside = open.at(-1);
    const token = matchAt(scalar);
    const wantsKey: boolean = next === "key" || next === "first key";
    const wantsValue: boolean = next === "value" || next === "first value";
    if (token !== "" && (wantsValue || (wantsKey && character === '"'))) {
      at += token.length;
      next = wantsKey ? "colon" : "after";
    } else if (wantsValue && (character === "[" || character === "{")) {
      open.push(character);
      at++;
      next = character === "[" ? "first value" : "first key";
    } else if (next === "colon" && character === ":") {
      at++;
      next = "value";
    } else if (next === "after" && character === "," && inside !== undefined) {
      at++;
      next = inside === "[" ? "value" : "key";
    } else if (
      (character === "]" && inside === "[" && (next === "after" || next === "first value")) ||
      (character === "}" && inside === "{" && (next === "after" || next === "first key"))
    ) {
      open.pop();
      at++;
      next = "after";
    } else return at;
  }
}
