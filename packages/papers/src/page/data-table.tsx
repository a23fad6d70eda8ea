import type { ReactNode } from 'react';

interface Column<Row> {
  readonly head: string;
  readonly cell: (row: Row) => ReactNode;
  /** figures stand right, under each other */
  readonly figures?: boolean;
}

interface DataTableProps<Row> {
  readonly label: string;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly keyOf: (row: Row) => string;
  readonly className?: string;
}

/** A table whose first column names the row; on a narrow screen every row becomes a block with its headings beside. */
export function DataTable<Row>({ label, columns, rows, keyOf, className }: DataTableProps<Row>) {
  return (
    // the roles keep it a table where the narrow layout sets `display: block`
    // biome-ignore-start lint/a11y/noRedundantRoles: see above
    <table className={`data ${className ?? ''}`} aria-label={label} role="table">
      <thead role="rowgroup">
        <tr role="row">
          {columns.map(({ head, figures }) => (
            <th key={head} scope="col" role="columnheader" className={figures ? 'figures' : undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map((row) => (
          <tr key={keyOf(row)} role="row">
            {columns.map(({ head, cell, figures }, at) =>
              at === 0 ? (
                <th key={head} scope="row" role="rowheader">
                  {cell(row)}
                </th>
              ) : (
                <td key={head} role="cell" data-head={head} className={figures ? 'figures' : undefined}>
                  {cell(row)}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
    // biome-ignore-end lint/a11y/noRedundantRoles: see above
  );
}
