import { useStation, type OutboxLine } from "../../device/index.ts";
import { sayKind, Table, Timestamp, type Column } from "../../parts/index.ts";

interface LineTableProps {
  readonly lines: readonly OutboxLine[];
  readonly caption: string;
}

/** Lines as written: what, about what, when, by whom. */
export function LineTable({ lines, caption }: LineTableProps) {
  const { kits, people, places } = useStation();
  const names = new Map<string, string>([
    ...kits.map(({ id, name }) => [`kit:${id}`, name] as [string, string]),
    ...places.map(({ id, name }) => [`place:${id}`, name] as [string, string]),
    ...people.map(({ id, name }) => [`person:${id}`, name] as [string, string]),
  ]);
  return (
    <Table caption={caption} isCaptionHidden columns={columns(names)} rows={lines} rowKey={({ entry }) => entry.id} />
  );
}

function columns(names: ReadonlyMap<string, string>): readonly Column<OutboxLine>[] {
  return [
    { key: "what", head: "Line", cell: ({ entry }) => sayKind(entry.kind) },
    { key: "about", head: "About", cell: ({ entry }) => names.get(entry.subject) ?? entry.subject },
    { key: "at", head: "Written", cell: ({ entry }) => <Timestamp at={entry.at} /> },
    { key: "by", head: "By", cell: ({ entry }) => names.get(`person:${entry.by}`) ?? entry.by },
  ];
}
