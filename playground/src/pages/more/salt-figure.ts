import { html, nothing, type TemplateResult } from "lit";
import { column } from "rootledger";
import "../../charts/number-table.js";
import "../../charts/salt-lines.js";
import { dayLabel } from "../../text/number-format.js";
import { bare, unitText } from "../../text/quantity.js";
import { soilMoreWords } from "../../text/soil-more-words.js";
import type { ArmView } from "../arm-pictures.js";

/** Salt of the root zone by day under every programme; nothing where salt is not reckoned. */
export function saltFigure(season: readonly ArmView[], name: string): TemplateResult | typeof nothing {
  const w = soilMoreWords();
  const lines = season.flatMap(({ result: { solutes }, tree, picture: { letter } }) => {
    if (solutes?.salt === undefined) return [];
    const { values } = column(solutes.days, "rootZoneEce");
    const { trees, rows } = solutes.days;
    return [{ letter, eceDsPerM: Float64Array.from({ length: rows }, (_, day) => values[day * trees + tree]!) }];
  });
  if (lines.length === 0) return nothing;
  const { startDate } = season[0]!.result;
  const text = (value: number): string => `${bare("salt", value, 2)} ${unitText("salt")}`;
  const said = lines.map(({ letter, eceDsPerM }) =>
    w.saltSummary(letter, text(eceDsPerM[0]!), text(eceDsPerM.at(-1)!)),
  );
  const table = () => ({
    caption: w.saltTable,
    head: [w.week, ...lines.map(({ letter }) => `${letter}, ${unitText("salt")}`)],
    rows: Array.from({ length: Math.ceil(lines[0]!.eceDsPerM.length / 7) }, (_, week) => [
      dayLabel(startDate, week * 7),
      ...lines.map(({ eceDsPerM }) => bare("salt", eceDsPerM[Math.min(week * 7 + 6, eceDsPerM.length - 1)]!, 2)),
    ]),
  });
  return html`<figure class="salt"><h3>${w.salt(name)}</h3><p>${said.join("; ")}.</p>
    <rl-salt-lines .lines=${lines} .startDate=${startDate} .summary=${said.join("; ")}></rl-salt-lines>
    <rl-number-table .data=${table}></rl-number-table></figure>`;
}
