import type { Words } from "#words";
import { useStation, type OutboxLine, type StationView } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
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
  const words = useWords("outbox");
  return (
    <Table
      caption={caption}
      isCaptionHidden
      columns={columns(view, words, useWords("entryKinds"))}
      rows={lines}
      rowKey={({ entry }) => entry.id}
    />
  );
}

function columns(view: StationView, words: Words["outbox"], kinds: Words["entryKinds"]): readonly Column<Written>[] {
  return [
    { key: "what", head: words.line(), cell: ({ entry }) => sayKind(entry.kind, kinds) },
    { key: "about", head: words.about(), cell: ({ entry }) => sayAbout(view, entry.subject, words) },
    { key: "at", head: words.written(), cell: ({ entry }) => <Timestamp at={entry.at} /> },
    { key: "by", head: words.by(), cell: ({ entry }) => sayAbout(view, `person:${entry.by}`, words) },
  ];
}
