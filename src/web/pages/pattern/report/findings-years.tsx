import type { Pattern } from "#kit";
import { findingsByYear, type FindingsByYear, type YearFound } from "#station";
import { useMemo } from "react";
import { useStation } from "#web/device/index.ts";
import { AgeChart } from "#web/drawing/age-chart.tsx";
import { Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayFindings, sayFindingsBasis } from "./findings-words.ts";

const YEAR = 365.25;

/** Whether findings on the kits of a pattern come oftener or more seldom than they did: words, a picture, a table. */
export function FindingsYears({ pattern }: { readonly pattern: Pattern }) {
  const { kits, retired, today } = useStation();
  const told = useMemo(
    () => findingsByYear(pattern, [...kits, ...retired], `${today}T12:00:00Z`),
    [pattern, kits, retired, today],
  );
  const words = sayFindings(told);
  return (
    <Section id="findings-years" title="Findings a year">
      <p>{words}</p>
      {told.at.length > 0 && <Picture told={told} words={words} />}
      <p className="quiet">{sayFindingsBasis(told)}</p>
      {told.years.length > 0 && (
        <details className="kit-table">
          <summary>Findings a year as a table</summary>
          <Table caption="Findings a year" isCaptionHidden columns={COLUMNS} rows={told.years} rowKey={keyOf} />
        </details>
      )}
    </Section>
  );
}

function Picture({
  told: { at, kitYears, found, law },
  words,
}: {
  readonly told: FindingsByYear;
  readonly words: string;
}) {
  const steps = at.map((time, i) => ({ at: time * YEAR, value: i + 1 }));
  const ages = Array.from({ length: 41 }, (_, i) => (i * kitYears) / 40);
  const line = law ? ages.map((time) => ({ at: time * YEAR, value: (time / law.scale) ** law.shape })) : [];
  return (
    <AgeChart
      label={`Findings so far against the time that all kits were on charge. ${words} By calendar year in the table below.`}
      reading="Findings so far, all kits together"
      across="on charge, all kits together"
      steps={[{ at: 0, value: 0 }, ...steps, { at: kitYears * YEAR, value: found }]}
      law={line}
      most={Math.max(1, found)}
    />
  );
}

const keyOf = ({ year }: YearFound) => `${year}`;
const COLUMNS: readonly Column<YearFound>[] = [
  { key: "year", head: "Year", cell: ({ year }) => `${year}` },
  { key: "found", head: "Findings", align: "figures", cell: ({ found }) => found },
  { key: "kits", head: "Kits on charge, on average", align: "figures", cell: ({ kitYears }) => kitYears.toFixed(1) },
];
