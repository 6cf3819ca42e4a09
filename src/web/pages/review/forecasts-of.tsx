import { sayChance } from "#words";
import type { KeptForecast } from "#readiness";
import { EmptyState, sayCount, Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import type { Judged } from "./use-judged.ts";

/** What had been forecast on this casualty, and what came. */
export function ForecastsOf({ judged: { forecasts, left } }: { readonly judged: Judged }) {
  const beside = left > 0 && <span className="quiet">{sayCount(left, "forecast")} still to compute</span>;
  return (
    <Section title="Forecast and outcome" {...(beside && { beside })}>
      <p className="quiet">
        Each is computed anew from what was known at that moment: whether the water stands lower at the next sounding,
        where nothing was changed before it, and whether a kit starts.
      </p>
      {forecasts.length === 0 && left === 0 ? (
        <EmptyState title="Nothing here can be judged">
          <p>It takes two soundings of one space with nothing changed in between, or a kit of ours asked to start.</p>
        </EmptyState>
      ) : (
        <Table
          caption="Forecast and outcome"
          isCaptionHidden
          columns={COLUMNS}
          rows={forecasts}
          rowKey={({ of, at, kit }) => `${of} ${at} ${kit ?? ""}`}
        />
      )}
    </Section>
  );
}

const COLUMNS: readonly Column<KeptForecast>[] = [
  { key: "when", head: "When", cell: ({ at }) => <Timestamp at={at} as="time" /> },
  {
    key: "what",
    head: "What",
    cell: ({ of }) => (of === "lower" ? "Water lower at the next sounding" : "Starts and gives water"),
  },
  { key: "chance", head: "Chance told", cell: ({ chance }) => sayChance(chance, "ten") },
  { key: "came", head: "Came", cell: ({ came }) => (came ? "yes" : "no") },
];
