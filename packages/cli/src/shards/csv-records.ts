/** The records of a CSV text that comes line by line; a quoted cell may run over lines (RFC 4180). */
export async function* csvRecords(lines: AsyncIterable<string>): AsyncGenerator<string[]> {
  let record = "";
  let open = false;
  for await (const line of lines) {
    record = open ? `${record}\n${line}` : line;
    open = (record.split('"').length - 1) % 2 === 1;
    if (!open) yield cellsIn(record);
  }
}

const cell = /(?:"((?:[^"]|"")*)"|([^,]*))(,|$)/y;

function cellsIn(record: string): string[] {
  const cells: string[] = [];
  cell.lastIndex = 0;
  for (;;) {
    const [, quoted, plain = "", end] = cell.exec(record) ?? [];
    cells.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end !== ",") return cells;
  }
}
