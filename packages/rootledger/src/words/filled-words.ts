/** A text with its `$name` terms filled in; a name without a term stays. @example filledWords("$a of $b", { a: "1", b: "2" }) // "1 of 2" */
export const filledWords = (text: string, terms: Readonly<Record<string, string>>): string =>
  text.replace(/\$([a-z]+)/gi, (whole, name: string) => terms[name] ?? whole);
