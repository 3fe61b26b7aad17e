/** A cell of a table. */
export type Cell = string | number | null;

/** Table after RFC 4180: rows end with CR LF, cells with commas, quotes or line ends are quoted, quotes within are doubled. */
export const csvText = (rows: readonly (readonly Cell[])[]): string => rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');

/** A spreadsheet takes a text that begins with one of these for a formula; an apostrophe before it says that it is none. */
const FORMULA = /^[=+\-@\t\r]/;

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(cell);
  const text = FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
