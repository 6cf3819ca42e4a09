import { useWords } from "#web/language/index.ts";
import { sayChance, type Words } from "#words";
import type { KeptForecast } from "#readiness";
import { EmptyState, Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import type { Judged } from "./use-judged.ts";

interface ForecastsOfProps {
  readonly judged: Judged;
  readonly nameOf: (kit: string) => string;
}

/** What had been forecast on this casualty, and what came. */
export function ForecastsOf({ judged: { forecasts, left }, nameOf }: ForecastsOfProps) {
  const words = useWords("review");
  const beside = left > 0 && <span className="quiet">{words.left({ count: left })}</span>;
  return (
    <Section title={words.outcome()} {...(beside && { beside })}>
      <p className="quiet">{words.outcomeMore()}</p>
      {forecasts.length === 0 && left === 0 ? (
        <EmptyState title={words.noneJudged()}>
          <p>{words.noneJudgedMore()}</p>
        </EmptyState>
      ) : (
        <Table
          caption={words.outcome()}
          isCaptionHidden
          columns={columnsOf(words, nameOf)}
          rows={forecasts}
          rowKey={({ of, at, kit }) => `${of} ${at} ${kit ?? ""}`}
        />
      )}
    </Section>
  );
}

function columnsOf(words: Words["review"], nameOf: ForecastsOfProps["nameOf"]): readonly Column<KeptForecast>[] {
  return [
    { key: "when", head: words.when(), cell: ({ at }) => <Timestamp at={at} as="time" /> },
    {
      key: "what",
      head: words.what(),
      cell: ({ of, kit }) => {
        if (of === "lower") return words.lower();
        return kit === undefined ? words.starts() : words.startsOf({ kit: nameOf(kit) });
      },
    },
    { key: "chance", head: words.chanceTold(), cell: ({ chance }) => sayChance(chance, "ten") },
    { key: "came", head: words.came(), cell: ({ came }) => (came ? words.yes() : words.no()) },
  ];
}
