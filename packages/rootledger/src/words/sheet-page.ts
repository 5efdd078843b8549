import type { SheetText } from "./sheet-text.js";

/** A sheet as plain text, one line a statement. @example sheetPlain(text).split("\n")[0] */
export function sheetPlain(text: SheetText): string {
  const dashed = (lines: readonly string[]): string[] => lines.map((line) => `  - ${line}`);
  return `${[
    text.title,
    "",
    ...text.lines,
    "",
    `${text.expectedTitle}:`,
    ...dashed(text.expected.map((line) => `${line}.   ${text.readHere}: ______`)),
    text.expectedThen,
    "",
    `${text.stopIfTitle}:`,
    ...dashed(text.stopIf),
    "",
    ...text.small,
    `${text.adviser} ____________________`,
  ].join("\n")}\n`;
}

const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.codePointAt(0)};`);

/**
 * A sheet as one HTML document to print on half a page, black on white, with room to write; no script, nothing fetched.
 *
 * @example sheetHtml(text, "es").startsWith("<!doctype html>")
 */
export function sheetHtml(text: SheetText, language: string): string {
  const item = (line: string): string => `<li>${escaped(line)}</li>`;
  const reading = (line: string): string =>
    `<li>${escaped(line)}. <span class="write">${escaped(text.readHere)}: <i></i></span></li>`;
  const [amount, ...how] = text.lines;
  return `<!doctype html>
<html lang="${escaped(language)}">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(text.title)}</title>
<style>
@page { size: A4; margin: 12mm }
body { font: 10.5pt/1.25 sans-serif; color: #000; background: #fff; max-width: 186mm; margin: 0 auto; padding: 4mm }
h1 { font-size: 13pt; margin: 0 0 1mm } h2 { font-size: 11pt; margin: 2mm 0 1mm } p { margin: 0 0 1mm }
ul { margin: 0; padding-left: 4mm } .amount { font-size: 16pt; font-weight: bold } .how { font-size: 12pt }
.parts { display: grid; grid-template-columns: 1.15fr 1fr; gap: 0 7mm } @media (max-width: 150mm) { .parts { display: block } }
.write { white-space: nowrap; margin-left: 2mm } .write i { display: inline-block; width: 18mm; border-bottom: 1px solid #000 }
.small { font-size: 9pt; margin-top: 2mm } .small p { display: inline; margin-right: 1mm } @media print { body { padding: 0 } }
</style></head>
<body>
<h1>${escaped(text.title)}</h1>
<p class="amount">${escaped(amount)}</p>
<p class="how">${how.map(escaped).join(" ")}</p>
<div class="parts"><section>
<h2>${escaped(text.expectedTitle)}</h2>
<ul>${text.expected.map(reading).join("")}</ul>
<p>${escaped(text.expectedThen)}</p>
</section><section>
<h2>${escaped(text.stopIfTitle)}</h2>
<ul>${text.stopIf.map(item).join("")}</ul>
</section></div>
<div class="small">${text.small.map((line) => `<p>${escaped(line)}</p>`).join("")}<p>${escaped(text.adviser)} <span class="write"><i></i></span></p></div>
</body></html>
`;
}
