/** Rows as CSV after RFC 4180: a field with a comma, a quotation mark or a line break stands in quotation marks. */
export const csv = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');

const field = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
