import type { Pattern } from "#kit";
import { findingsByYear, type FindingsByYear, type YearFound } from "#station";
import { useMemo } from "react";
import { useStation } from "#web/device/index.ts";
import { AgeChart } from "#web/drawing/age-chart.tsx";
import { Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayFindings, sayFindingsBasis } from "./findings-words.ts";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

const YEAR = 365.25;

/** Whether findings on the kits of a pattern come oftener or more seldom than they did: words, a picture, a table. */
export function FindingsYears({ pattern }: { readonly pattern: Pattern }) {
  const words = useWords("patternFindings");
  const { kits, retired, casualties, today } = useStation();
  const told = useMemo(
    () => findingsByYear(pattern, [...kits, ...retired], `${today}T12:00:00Z`, casualties),
    [pattern, kits, retired, casualties, today],
  );
  const said = sayFindings(told, words);
  return (
    <Section id="findings-years" title={words.title()}>
      <p>{said}</p>
      {told.at.length > 0 && <Picture told={told} said={said} />}
      <p className="quiet">{sayFindingsBasis(told, words)}</p>
      {told.years.length > 0 && (
        <details className="kit-table">
          <summary>{words.asTable()}</summary>
          <Table
            caption={words.title()}
            isCaptionHidden
            columns={columns(words, told)}
            rows={told.years}
            rowKey={keyOf}
          />
        </details>
      )}
    </Section>
  );
}

function Picture({
  told: { at, kitYears, counted, law },
  said,
}: {
  readonly told: FindingsByYear;
  readonly said: string;
}) {
  const words = useWords("patternFindings");
  const steps = at.map((time, i) => ({ at: time * YEAR, value: i + 1 }));
  const ages = Array.from({ length: 41 }, (_, i) => (i * kitYears) / 40);
  const line = law ? ages.map((time) => ({ at: time * YEAR, value: (time / law.scale) ** law.shape })) : [];
  return (
    <AgeChart
      label={words.chart({ said })}
      reading={words.reading()}
      across={words.across()}
      steps={[{ at: 0, value: 0 }, ...steps, { at: kitYears * YEAR, value: counted }]}
      law={line}
      most={Math.max(1, counted)}
    />
  );
}

const keyOf = ({ year }: YearFound) => `${year}`;
const columns = (words: Words["patternFindings"], all: FindingsByYear): readonly Column<YearFound>[] => [
  { key: "year", head: words.year(), cell: ({ year }) => `${year}` },
  { key: "found", head: words.findings(), align: "figures", cell: ({ found }) => found },
  ...(all.counted < all.found ? [countedColumn(words)] : []),
  { key: "kits", head: words.kitsOnCharge(), align: "figures", cell: ({ kitYears }) => kitYears.toFixed(1) },
];

const countedColumn = (words: Words["patternFindings"]): Column<YearFound> => ({
  key: "counted",
  head: words.countedHead(),
  align: "figures",
  cell: ({ counted }) => counted,
});
