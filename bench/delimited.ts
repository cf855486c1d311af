/** Rows as CSV (RFC 4180): a cell with a comma, a quote or a line end stands in quotes. */
export function writeDelimited(rows: readonly (readonly string[])[]): string {
  const cell = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  return rows.map((row) => row.map(cell).join(',')).join('\r\n');
}
