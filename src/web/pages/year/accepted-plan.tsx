import { formatDate } from "#base";
import { useStation } from "#web/device/index.ts";
import { EmptyState, Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";

interface Row {
  readonly key: string;
  readonly week: string;
  readonly kit: string;
  readonly renews: string;
  readonly by: string;
}

const COLUMNS: readonly Column<Row>[] = [
  { key: "week", head: "Week of", cell: ({ week }) => formatDate(week) },
  { key: "kit", head: "Kit", cell: ({ kit }) => kit },
  { key: "renews", head: "Renewed or done", cell: ({ renews }) => renews },
  { key: "by", head: "By", cell: ({ by }) => by },
];

/** The plan that stands in the log. */
export function AcceptedPlan() {
  const view = useStation();
  const rows = view.kits
    .flatMap((kit) =>
      (kit.planned?.openings ?? []).map(({ id, week, renews, by }) => ({
        key: `${kit.id} ${id}`,
        week,
        kit: kit.name,
        renews: renews.join(", "),
        by: by.map((person) => nameOf(view, person)).join(", "),
      })),
    )
    .toSorted((one, other) => (one.week < other.week ? -1 : 1));
  const newest = view.kits.flatMap(({ planned }) => planned ?? []).toSorted((a, b) => (a.at < b.at ? 1 : -1))[0];
  if (newest === undefined) return <EmptyState title="No plan is accepted yet" />;
  return (
    <Section title="The accepted plan">
      <p>
        Last accepted by {nameOf(view, newest.by)} <Timestamp at={newest.at} />.
      </p>
      <Table caption="Openings planned" isCaptionHidden columns={COLUMNS} rows={rows} rowKey={({ key }) => key} />
    </Section>
  );
}
