/** Month names by their first letters, without accents: English, Spanish, Portuguese, German, French, Italian. */
const months: readonly string[] = [
  "jan ene gen janv januar january enero janeiro janvier gennaio janner",
  "feb fev fevr februar february febrero fevereiro fevrier febbraio",
  "mar mrz mars marz march maerz marzo marco",
  "apr abr avr april abril avril aprile",
  "may mai mag maio mayo maggio",
  "jun juin giu june juni junio junho giugno",
  "jul juil lug july juli julio julho juillet luglio",
  "aug ago aou aout august agosto",
  "sep set sept september septiembre setiembre setembro septembre settembre",
  "oct okt out ott oktober october octubre outubro octobre ottobre",
  "nov november noviembre novembro novembre",
  "dec dez dic december dezember diciembre dezembro decembre dicembre",
];

const byWord: ReadonlyMap<string, number> = new Map(
  months.flatMap((words, index) => words.split(" ").map((word): [string, number] => [word, index + 1])),
);

/** Month 1-12 of a name in lower case; 0 where it is none. @example monthOfWord("dic") // 12 */
export function monthOfWord(word: string): number {
  const found = byWord.get(word);
  if (found !== undefined) return found;
  return byWord.get(word.normalize("NFKD").replace(/[\u0300-\u036f.]/g, "")) ?? 0;
}
