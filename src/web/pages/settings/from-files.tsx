import type { Words } from "#words";
import { useStation, type StationView } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";

type Row = StationView["broughtBack"][number];

/** Lines that no device sent, taken in at the station's terminal from a file: the log tells it to everybody, for good. */
export function FromFiles() {
  const view = useStation();
  const words = useWords("settingsStation");
  const rows = view.broughtBack.filter(({ how }) => how === "file-bringer" || how === "file-word");
  if (rows.length === 0) return null;
  return (
    <Section title={words.fromFiles()}>
      <p>{words.fromFilesMore()}</p>
      <Table
        caption={words.fromFiles()}
        isCaptionHidden
        columns={columnsOf(view, words)}
        rows={rows}
        rowKey={({ entry }) => entry}
      />
    </Section>
  );
}

function columnsOf(view: StationView, words: Words["settingsStation"]): readonly Column<Row>[] {
  return [
    { key: "at", head: words.when(), cell: ({ at }) => <Timestamp at={at} /> },
    { key: "lines", head: words.lines(), cell: ({ lines }) => words.lineCount({ count: lines.length }) },
    { key: "from", head: words.writtenOn(), cell: ({ from = [] }) => sayDevices(view, from, words) },
    {
      key: "how",
      head: words.byWordOf(),
      cell: ({ how, by }) => {
        const person = nameOf(view, by);
        return how === "file-bringer" ? words.whoWrote({ person }) : words.whoAdministers({ person });
      },
    },
  ];
}

function sayDevices({ devices }: StationView, ids: readonly string[], words: Words["settingsStation"]): string {
  if (ids.length === 0) return words.notSaid();
  return ids.map((id) => devices.find((one) => one.id === id)?.name ?? words.deviceUnknown({ id })).join(", ");
}
