import type { ComponentChildren } from 'preact';

interface PrintTableProps<Row> {
  readonly title: string;
  /** Class of the table, for the widths of its columns. */
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: readonly Row[];
  /** Rows that two pages have room for. */
  readonly most: number;
  readonly keyOf: (row: Row) => number;
  readonly cells: (row: Row) => readonly ComponentChildren[];
}

/** A table of the printed report, which says how many rows it leaves out. */
export const PrintTable = <Row,>({ title, name, columns, rows, most, keyOf, cells }: PrintTableProps<Row>) => (
  <section>
    <h2>
      {title} ({rows.length})
    </h2>
    <table class={`print-table ${name}`}>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.slice(0, most).map((row) => (
          <tr key={keyOf(row)}>
            {cells(row).map((cell, k) => (
              <td key={columns[k]}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
    {rows.length > most && <p>And {rows.length - most} more, which the report on screen and the run file have.</p>}
  </section>
);
