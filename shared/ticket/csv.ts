// Tables as text that every spreadsheet reads.

/** A cell; nothing is an empty one. */
export type CsvCell = string | number | undefined;

/**
 * The rows, a heading first, each with as many cells as the heading, ended by CR LF.
 *
 * @source RFC 4180, section 2.
 */
export function writeCsv(heading: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  return [heading, ...rows].map((row) => `${row.map(writeCell).join(',')}\r\n`).join('');
}

function writeCell(cell: CsvCell): string {
  const text = `${cell ?? ''}`;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
