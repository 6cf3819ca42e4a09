import type { RecordTable } from "#station";
import { Section } from "#web/parts/index.ts";
import { Table } from "#web/parts/table.tsx";

interface RecordPartProps {
  readonly title: string;
  readonly table: RecordTable;
}

/** One part of the record as the paper has it; nothing where there is nothing of it. */
export function RecordPart({ title, table }: RecordPartProps) {
  if (table.rows.length === 0) return null;
  return (
    <Section title={title}>
      <Rows caption={title} table={table} />
    </Section>
  );
}

/** The rows of a part, with the paper's columns. */
export function Rows({ caption, table: { columns, rows } }: { readonly caption: string; readonly table: RecordTable }) {
  return (
    <Table
      caption={caption}
      isCaptionHidden
      columns={columns.map(({ name }, at) => ({ key: name, head: name, cell: (row: Row) => cellOf(row, at) }))}
      rows={rows}
      rowKey={(row) => String(rows.indexOf(row))}
    />
  );
}

type Row = RecordTable["rows"][number];

function cellOf({ cells, bold }: Row, at: number) {
  return bold ? <strong>{cells[at]}</strong> : cells[at];
}
