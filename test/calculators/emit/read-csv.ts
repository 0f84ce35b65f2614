/**
 * Reads CSV after RFC 4180.
 * @throws Error for what that standard does not allow.
 */
export function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    const quoted = /"((?:[^"]|"")*)"/y;
    const plain = /[^",\r\n]*/y;
    quoted.lastIndex = plain.lastIndex = at;
    const match = quoted.exec(text) ?? plain.exec(text);
    if (!match) throw new Error(`no field at ${at}`);
    row.push(match[1]?.replaceAll('""', '"') ?? match[0]);
    at += match[0].length;
    if (text.startsWith(',', at)) at += 1;
    else if (text.startsWith('\r\n', at)) {
      rows.push(row);
      row = [];
      at += 2;
    } else throw new Error(`a field goes on at ${at}`);
  }
  return rows;
}
