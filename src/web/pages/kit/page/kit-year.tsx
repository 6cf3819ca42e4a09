import { formatDate } from "#base";
import { bandsOf, type Band } from "#readiness";
import { BandLegend, YearBands } from "#web/drawing/index.ts";
import { Section, STANDING_WORDS } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { kitRow, yearFrom } from "#web/kit-view/year-ahead.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** What the kit is worth over the year if nobody does anything, and why. */
export function KitYear({ at: { kit, pattern, view } }: { readonly at: KitAtHand }) {
  const range = yearFrom(view.today);
  const bands = bandsOf(kit, pattern, range, view.policy, { otherPatternVersions: [...view.patterns.values()] });
  const row = kitRow(kit, bands);
  const label = `Standing of ${kit.name} from ${formatDate(range.from)} to ${formatDate(range.to)}; the same in the table below.`;
  return (
    <Section id="year" title="The year ahead, if nobody does anything">
      <BandLegend fills={[...new Set(row.pieces.map(({ fill }) => fill))]} />
      <YearBands label={label} rows={[row]} {...range} today={view.today} />
      <details className="kit-table">
        <summary>The year as a table</summary>
        <Table caption="The year ahead" isCaptionHidden columns={COLUMNS} rows={bands} rowKey={({ from }) => from} />
      </details>
    </Section>
  );
}

const COLUMNS: readonly Column<Band>[] = [
  { key: "from", head: "From", cell: ({ from }) => formatDate(from) },
  { key: "to", head: "To", cell: ({ to }) => formatDate(to) },
  { key: "standing", head: "Standing", cell: ({ standing }) => STANDING_WORDS[standing] },
  { key: "because", head: "Because", cell: ({ because }) => because },
];
