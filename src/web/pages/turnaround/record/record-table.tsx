import type { RecordTable } from "#station";
import { useWords } from "#web/language/index.ts";
import { MoreOnPhone, Section } from "#web/parts/index.ts";
import { useIsPhone } from "#web/parts/more-on-phone.tsx";
import { Table } from "#web/parts/table.tsx";

interface RecordPartProps {
  readonly title: string;
  readonly table: RecordTable;
}

/** One part of the record as the paper has it, on a phone behind a tap; nothing where there is nothing of it. */
export function RecordPart({ title, table }: RecordPartProps) {
  const words = useWords("turnaroundRecord");
  const isPhone = useIsPhone();
  if (table.rows.length === 0) return null;
  const rows = <Rows caption={title} table={table} />;
  if (!isPhone) return <Section title={title}>{rows}</Section>;
  return (
    <div className="record-fold">
      <MoreOnPhone title={words.partOf({ title, count: table.rows.length })}>{rows}</MoreOnPhone>
    </div>
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
