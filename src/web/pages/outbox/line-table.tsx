import { useStation, type OutboxLine, type StationView } from "#web/device/index.ts";
import { Timestamp } from "#web/parts/index.ts";
import { sayKind } from "#web/parts/words/entry-words.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayAbout } from "./subject-names.ts";

type Written = Pick<OutboxLine, "entry">;

interface LineTableProps {
  readonly lines: readonly Written[];
  readonly caption: string;
}

/** Lines as written: what, about what, when, by whom. */
export function LineTable({ lines, caption }: LineTableProps) {
  const view = useStation();
  return (
    <Table caption={caption} isCaptionHidden columns={columns(view)} rows={lines} rowKey={({ entry }) => entry.id} />
  );
}

function columns(view: StationView): readonly Column<Written>[] {
  return [
    { key: "what", head: "Line", cell: ({ entry }) => sayKind(entry.kind) },
    { key: "about", head: "About", cell: ({ entry }) => sayAbout(view, entry.subject) },
    { key: "at", head: "Written", cell: ({ entry }) => <Timestamp at={entry.at} /> },
    { key: "by", head: "By", cell: ({ entry }) => sayAbout(view, `person:${entry.by}`) },
  ];
}
