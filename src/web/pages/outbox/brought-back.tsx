import type { ReactNode } from "react";
import { useStation, type StationView } from "#web/device/index.ts";
import { sayCount, Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayAbout } from "./subject-names.ts";

type Row = StationView["broughtBack"][number];

/** What devices gave back after the station was put back to an earlier copy: the log tells it to everybody, for good. */
export function BroughtBack() {
  const view = useStation();
  const back = view.broughtBack.filter(({ how }) => how === "vouched" || how === "word");
  const handed = view.broughtBack.filter(({ how }) => how === "handed");
  return (
    <>
      <Told title="Brought back by devices" rows={back}>
        The station was put back to an earlier copy. It had lost these lines; devices that held them gave them back.
      </Told>
      <Told title="Taken in for other devices" rows={handed}>
        Lines of sheets that never came from the device that wrote them. Another device had them by code or file, and an
        administrator said that they are genuine.
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
  if (rows.length === 0) return null;
  return (
    <Section title={title}>
      <p>{children}</p>
      <Table caption={title} isCaptionHidden columns={columnsOf(view)} rows={rows} rowKey={({ entry }) => entry} />
    </Section>
  );
}

function columnsOf(view: StationView): readonly Column<Row>[] {
  return [
    { key: "at", head: "When", cell: ({ at }) => <Timestamp at={at} /> },
    { key: "lines", head: "Lines", cell: ({ lines }) => sayCount(lines.length, "line") },
    { key: "device", head: "From", cell: ({ device }) => nameOf(view, device) },
    { key: "by", head: "In use by", cell: ({ by }) => sayAbout(view, `person:${by}`) },
    { key: "how", head: "Shown by", cell: ({ how }) => (how === "vouched" ? "the station's own mark" : "their word") },
  ];
}

function nameOf(view: StationView, device: string): string {
  return view.devices.find(({ id }) => id === device)?.name ?? device;
}
