import { daysBetween } from "#base";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { lapsesOf, sayLapse, type LapseInWords } from "#readiness";
import { DatesToRead } from "./dates-to-read.tsx";
import { EmptyState, sayDate, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { sayDaysOff } from "./contents.ts";
import { sayEffect } from "#web/act/finding-choice.ts";

/** Dates shown before the rest is folded. */
const FIRST = 8;

/** Everything dated that ends or limits the kit's standing, in order of day. */
export function KitDates({ at }: { readonly at: KitAtHand }) {
  const words = useWords("kitPage");
  const { kit, pattern, view } = at;
  const standingWords = useWords("standing");
  const lapses = lapsesOf(kit, pattern, view.policy, { otherPatternVersions: [...view.patterns.values()] }).map((one) =>
    sayLapse(one, standingWords),
  );
  return (
    <Section id="dates" title={words.datesInOrder()}>
      {lapses.length === 0 ? (
        <EmptyState title={words.nothingDated()} />
      ) : (
        <DateTable caption={words.datesInOrder()} lapses={lapses.slice(0, FIRST)} today={view.today} />
      )}
      {lapses.length > FIRST && (
        <details className="kit-table">
          <summary>{words.countLater({ count: lapses.length - FIRST })}</summary>
          <DateTable caption={words.laterDates()} lapses={lapses.slice(FIRST)} today={view.today} />
        </details>
      )}
      <DatesToRead at={at} />
    </Section>
  );
}

interface DateTableProps {
  readonly caption: string;
  readonly lapses: readonly LapseInWords[];
  readonly today: string;
}

function DateTable({ caption, lapses, today }: DateTableProps) {
  const words = useWords("kitPage");
  const lineWords = useWords("kitLine");
  return (
    <Table
      caption={caption}
      isCaptionHidden
      columns={columns(today, words, lineWords)}
      rows={lapses}
      rowKey={({ day, what }) => `${day} ${what}`}
    />
  );
}

function columns(today: string, words: Words["kitPage"], lineWords: Words["kitLine"]): readonly Column<LapseInWords>[] {
  return [
    { key: "day", head: words.lastGoodDay(), cell: ({ day }) => sayDate(day) },
    { key: "left", head: words.left(), cell: ({ day }) => <Left days={daysBetween(today, day)} /> },
    { key: "what", head: words.whatThen(), cell: ({ what }) => what.charAt(0).toUpperCase() + what.slice(1) },
    { key: "effect", head: words.whichMeans(), cell: ({ effect }) => sayEffect(effect, lineWords) },
  ];
}

function Left({ days }: { readonly days: number }) {
  const words = useWords("kitPage");
  if (days < 0) return <span className="kit-wrong">{words.pastFor({ count: -days })}</span>;
  return days === 0 ? words.lastDayToday() : <DaysOff days={days} />;
}

function DaysOff({ days }: { readonly days: number }) {
  return sayDaysOff(days, useWords("kitHistory"));
}
