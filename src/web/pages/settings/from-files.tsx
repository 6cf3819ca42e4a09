import { useStation, type StationView } from "#web/device/index.ts";
import { sayCount, Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";

type Row = StationView["broughtBack"][number];

/** Lines that no device sent, taken in at the station's terminal from a file: the log tells it to everybody, for good. */
export function FromFiles() {
  const view = useStation();
  const rows = view.broughtBack.filter(({ how }) => how === "file-bringer" || how === "file-word");
  if (rows.length === 0) return null;
  return (
    <Section title="Taken in from files">
      <p>Lines that their devices never sent. Somebody at the station's own terminal took them in with a file.</p>
      <Table
        caption="Taken in from files"
        isCaptionHidden
        columns={columnsOf(view)}
        rows={rows}
        rowKey={({ entry }) => entry}
      />
    </Section>
  );
}

function columnsOf(view: StationView): readonly Column<Row>[] {
  return [
    { key: "at", head: "When", cell: ({ at }) => <Timestamp at={at} /> },
    { key: "lines", head: "Lines", cell: ({ lines }) => sayCount(lines.length, "line") },
    { key: "from", head: "Written on", cell: ({ from = [] }) => sayDevices(view, from) },
    { key: "how", head: "By the word of", cell: ({ how, by }) => sayWord(view, how, by) },
  ];
}

function sayDevices({ devices }: StationView, ids: readonly string[]): string {
  if (ids.length === 0) return "not said";
  return ids
    .map((id) => devices.find((one) => one.id === id)?.name ?? `a device this station does not know (${id})`)
    .join(", ");
}

function sayWord(view: StationView, how: Row["how"], by: string): string {
  const name = nameOf(view, by);
  return how === "file-bringer" ? `${name}, who wrote them` : `${name}, administrator`;
}
