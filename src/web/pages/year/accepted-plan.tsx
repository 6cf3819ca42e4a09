import type { Words } from "#words";
import { useStation } from "#web/device/index.ts";
import { useWords, withParts } from "#web/language/index.ts";
import { EmptyState, sayDate, Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";

interface Row {
  readonly key: string;
  readonly week: string;
  readonly kit: string;
  readonly renews: string;
  readonly by: string;
}

const columns = (words: Words["year"]): readonly Column<Row>[] => [
  { key: "week", head: words.weekOf(), cell: ({ week }) => sayDate(week) },
  { key: "kit", head: words.kit(), cell: ({ kit }) => kit },
  { key: "renews", head: words.renewed(), cell: ({ renews }) => renews },
  { key: "by", head: words.by(), cell: ({ by }) => by },
];

/** The plan that stands in the log. */
export function AcceptedPlan() {
  const view = useStation();
  const words = useWords("year");
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
  if (newest === undefined) return <EmptyState title={words.noPlan()} />;
  return (
    <Section title={words.acceptedPlan()}>
      <p>
        {withParts((part) => words.acceptedBy({ ...part, person: nameOf(view, newest.by) }), {
          at: <Timestamp at={newest.at} />,
        })}
      </p>
      <Table caption={words.planned()} isCaptionHidden columns={columns(words)} rows={rows} rowKey={({ key }) => key} />
    </Section>
  );
}
