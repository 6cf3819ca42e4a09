import type { ReactNode } from "react";
import "./table.css";

export interface Column<Row> {
  readonly key: string;
  readonly head: string;
  readonly cell: (row: Row) => ReactNode;
  /** `figures` lines numbers up on the right. */
  readonly align?: "figures";
  /** Holds a button whose own words say enough: on a phone the head is left out. */
  readonly isAct?: boolean;
}

export interface TableProps<Row> {
  /** What the table holds; read out, and shown unless hidden. */
  readonly caption: string;
  readonly isCaptionHidden?: boolean;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
}

/** Rows and columns; on a phone each row becomes a block with its column heads beside the values. The first column names the row. */
export function Table<Row>({ caption, isCaptionHidden = false, columns, rows, rowKey }: TableProps<Row>) {
  return (
    <table className="table">
      <caption className={isCaptionHidden ? "for-readers-only" : undefined}>{caption}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column.key} scope="col" data-align={column.align}>
              {column.head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <TableRow key={rowKey(row)} row={row} columns={columns} />
        ))}
      </tbody>
    </table>
  );
}

function TableRow<Row>({ row, columns }: { readonly row: Row; readonly columns: readonly Column<Row>[] }) {
  return (
    <tr>
      {columns.map((column, at) =>
        at === 0 ? (
          <th key={column.key} scope="row">
            {column.cell(row)}
          </th>
        ) : (
          <td key={column.key} data-align={column.align} data-head={column.isAct === true ? undefined : column.head}>
            {column.cell(row)}
          </td>
        ),
      )}
    </tr>
  );
}
