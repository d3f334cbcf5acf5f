/** CSV by RFC 4180 read back, written apart from the writer; throws at anything the standard does not allow. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let at = 0;
  while (at < text.length) {
    const row: string[] = [];
    for (;;) {
      const field = text[at] === '"' ? /"((?:[^"]|"")*)"/y : /[^",\r\n]*/y;
      field.lastIndex = at;
      const match = field.exec(text);
      if (!match) throw new Error(`no field at ${at}`);
      row.push((match[1] ?? match[0]).replaceAll('""', '"'));
      at = field.lastIndex;
      if (text[at] !== ",") break;
      at++;
    }
    if (text.slice(at, at + 2) !== "\r\n") throw new Error(`a row does not end in CRLF at ${at}`);
    at += 2;
    rows.push(row);
  }
  return rows;
}
