import { inWords, type Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { bandsOf, type Band } from "#readiness";
import { BandLegend, YearBands } from "#web/drawing/index.ts";
import { sayDate, sayStanding, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { kitRow, yearFrom } from "#web/kit-view/year-ahead.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** What the kit is worth over the year if nobody does anything, and why. */
export function KitYear({ at: { kit, pattern, view } }: { readonly at: KitAtHand }) {
  const words = useWords("kitPage");
  const bandWords = useWords("bands");
  const parts = useWords("parts");
  const standingWords = useWords("standing");
  const range = yearFrom(view.today);
  const bands = bandsOf(kit, pattern, range, view.policy, { otherPatternVersions: [...view.patterns.values()] });
  const row = kitRow(kit, bands, { bands: bandWords, parts, standing: standingWords });
  const label = words.yearOf({ kit: kit.name, from: sayDate(range.from), to: sayDate(range.to) });
  return (
    <Section id="year" title={words.year()}>
      <BandLegend fills={[...new Set(row.pieces.map(({ fill }) => fill))]} />
      <YearBands label={label} rows={[row]} {...range} today={view.today} />
      <details className="kit-table">
        <summary>{words.yearTable()}</summary>
        <Table
          caption={words.yearCaption()}
          isCaptionHidden
          columns={columnsOf(words, parts, standingWords)}
          rows={bands}
          rowKey={({ from }) => from}
        />
      </details>
    </Section>
  );
}

function columnsOf(
  words: Words["kitPage"],
  parts: Words["parts"],
  standing: Words["standing"],
): readonly Column<Band>[] {
  return [
    { key: "from", head: words.from(), cell: ({ from }) => sayDate(from) },
    { key: "to", head: words.to(), cell: ({ to }) => sayDate(to) },
    { key: "standing", head: words.standing(), cell: (band) => sayStanding(band.standing, parts) },
    { key: "because", head: words.because(), cell: ({ because }) => inWords(because, standing) },
  ];
}
