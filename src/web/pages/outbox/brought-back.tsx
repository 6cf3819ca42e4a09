import type { ReactNode } from "react";
import type { Words } from "#words";
import { useStation, type StationView } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayAbout } from "./subject-names.ts";

type Row = StationView["broughtBack"][number];

/** What devices gave back after the station was put back to an earlier copy: the log tells it to everybody, for good. */
export function BroughtBack() {
  const view = useStation();
  const words = useWords("outboxOther");
  const back = view.broughtBack.filter(({ how }) => how === "vouched" || how === "word");
  const handed = view.broughtBack.filter(({ how }) => how === "handed");
  return (
    <>
      <Told title={words.broughtBack()} rows={back}>
        {words.broughtBackMore()}
      </Told>
      <Told title={words.takenForOthers()} rows={handed}>
        {words.takenForOthersMore()}
      </Told>
    </>
  );
}

interface ToldProps {
  readonly title: string;
  readonly rows: readonly Row[];
  readonly children: ReactNode;
}

function Told({ title, rows, children }: ToldProps) {
  const view = useStation();
  const [words, subjects] = [useWords("outboxOther"), useWords("outbox")];
  if (rows.length === 0) return null;
  return (
    <Section title={title}>
      <p>{children}</p>
      <Table
        caption={title}
        isCaptionHidden
        columns={columnsOf(view, words, subjects)}
        rows={rows}
        rowKey={({ entry }) => entry}
      />
    </Section>
  );
}

function columnsOf(view: StationView, words: Words["outboxOther"], subjects: Words["outbox"]): readonly Column<Row>[] {
  return [
    { key: "at", head: words.when(), cell: ({ at }) => <Timestamp at={at} /> },
    { key: "lines", head: words.lines(), cell: ({ lines }) => words.lineCount({ count: lines.length }) },
    { key: "device", head: words.from(), cell: ({ device }) => nameOf(view, device) },
    { key: "by", head: words.inUseBy(), cell: ({ by }) => sayAbout(view, `person:${by}`, subjects) },
    { key: "how", head: words.shownBy(), cell: ({ how }) => (how === "vouched" ? words.byMark() : words.byWord()) },
  ];
}

function nameOf(view: StationView, device: string): string {
  return view.devices.find(({ id }) => id === device)?.name ?? device;
}
