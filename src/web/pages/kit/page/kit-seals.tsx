import { EmptyState, sayDay, Section, Timestamp } from "#web/parts/index.ts";
import type { Words } from "#words";
import { useWords, withParts } from "#web/language/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf, type KitAtHand } from "#web/kit-view/at-hand.ts";
import type { KitState } from "#readiness";

type SealLine = KitState["seals"][number];

const WHAT = { fitted: "fitted", seen: "sealRead", broken: "sealBroken" } as const;
const FIRST = 5;

/** Every seal fitted, read or broken, newest first. */
export function KitSeals({ at }: { readonly at: KitAtHand }) {
  const words = useWords("kitHistory");
  const { kit } = at;
  const newest = kit.seals.toReversed();
  return (
    <Section id="seals" title={words.seals()}>
      {kit.seal && (
        <p>
          {withParts(words.sealOnRecord, {
            number: <strong className="tabular">{kit.seal.number}</strong>,
            day: <Timestamp at={kit.seal.at} as="day" />,
          })}
        </p>
      )}
      {kit.sealMismatch && (
        <p className="kit-wrong">
          {words.sealMismatch({
            seen: kit.sealMismatch.seen || words.noSeal(),
            day: sayDay(kit.sealMismatch.at),
            expected: kit.sealMismatch.expected,
          })}
        </p>
      )}
      {newest.length === 0 ? (
        <EmptyState title={words.noSealOnRecord()} />
      ) : (
        <SealTable at={at} caption={words.sealsNewest()} seals={newest.slice(0, FIRST)} />
      )}
      {newest.length > FIRST && (
        <details className="kit-table">
          <summary>{words.older({ count: newest.length - FIRST })}</summary>
          <SealTable at={at} caption={words.olderSeals()} seals={newest.slice(FIRST)} />
        </details>
      )}
    </Section>
  );
}

interface SealTableProps {
  readonly at: KitAtHand;
  readonly caption: string;
  readonly seals: readonly SealLine[];
}

function SealTable({ at, caption, seals }: SealTableProps) {
  const words = useWords("kitHistory");
  return (
    <Table
      caption={caption}
      isCaptionHidden
      columns={columns(at, words)}
      rows={seals}
      rowKey={({ entry, what, number }) => `${entry} ${what} ${number}`}
    />
  );
}

/** The first seal of a kit was on it when it was taken on charge: nobody here saw it fitted. */
function sayWhat({ kit }: KitAtHand, { entry, what }: SealLine, words: Words["kitHistory"]): string {
  return entry === kit.enrolled.entry ? words.sealEnrolled() : words[WHAT[what]]();
}

function columns(at: KitAtHand, words: Words["kitHistory"]): readonly Column<SealLine>[] {
  const { view } = at;
  return [
    {
      key: "number",
      head: words.seal(),
      cell: ({ number }) => <span className="tabular">{number || words.noneFound()}</span>,
    },
    { key: "what", head: words.what(), cell: (seal) => sayWhat(at, seal, words) },
    { key: "when", head: words.when(), cell: (seal) => <Timestamp at={seal.at} /> },
    { key: "who", head: words.by(), cell: ({ by }) => nameOf(view, by) },
  ];
}
