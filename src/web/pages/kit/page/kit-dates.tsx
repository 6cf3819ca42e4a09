import { daysBetween, formatDate } from "#base";
import { lapsesOf, type Lapse } from "#readiness";
import { DatesToRead } from "./dates-to-read.tsx";
import { EmptyState, sayCount, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { sayDaysOff } from "./contents.ts";
import { sayEffect } from "#web/act/finding-choice.ts";

/** Dates shown before the rest is folded. */
const FIRST = 8;

/** Everything dated that ends or limits the kit's standing, in order of day. */
export function KitDates({ at }: { readonly at: KitAtHand }) {
  const { kit, pattern, view } = at;
  const lapses = lapsesOf(kit, pattern, view.policy, { otherPatternVersions: [...view.patterns.values()] });
  return (
    <Section id="dates" title="Dates in order">
      {lapses.length === 0 ? (
        <EmptyState title="Nothing in this kit is dated" />
      ) : (
        <DateTable caption="Dates in order" lapses={lapses.slice(0, FIRST)} today={view.today} />
      )}
      {lapses.length > FIRST && (
        <details className="kit-table">
          <summary>{lapses.length - FIRST} later</summary>
          <DateTable caption="Later dates" lapses={lapses.slice(FIRST)} today={view.today} />
        </details>
      )}
      <DatesToRead at={at} />
    </Section>
  );
}

interface DateTableProps {
  readonly caption: string;
  readonly lapses: readonly Lapse[];
  readonly today: string;
}

function DateTable({ caption, lapses, today }: DateTableProps) {
  return (
    <Table
      caption={caption}
      isCaptionHidden
      columns={columns(today)}
      rows={lapses}
      rowKey={({ day, what }) => `${day} ${what}`}
    />
  );
}

function columns(today: string): readonly Column<Lapse>[] {
  return [
    { key: "day", head: "Last good day", cell: ({ day }) => formatDate(day) },
    { key: "left", head: "Left", cell: ({ day }) => <Left days={daysBetween(today, day)} /> },
    { key: "what", head: "Then", cell: ({ what }) => what.charAt(0).toUpperCase() + what.slice(1) },
    { key: "effect", head: "Which means", cell: ({ effect }) => sayEffect(effect) },
  ];
}

function Left({ days }: { readonly days: number }) {
  if (days < 0) return <span className="kit-wrong">Past for {sayCount(-days, "day")}</span>;
  return days === 0 ? "Last day today" : sayDaysOff(days);
}
