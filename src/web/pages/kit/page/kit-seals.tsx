import { EmptyState, Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf, type KitAtHand } from "#web/kit-view/at-hand.ts";
import type { KitState } from "#readiness";

type SealLine = KitState["seals"][number];

const WHAT = { fitted: "Fitted", seen: "Read", broken: "Broken" } as const;
const FIRST = 5;

/** Every seal fitted, read or broken, newest first. */
export function KitSeals({ at }: { readonly at: KitAtHand }) {
  const { kit } = at;
  const newest = kit.seals.toReversed();
  return (
    <Section id="seals" title="Seals">
      {kit.seal && (
        <p>
          On record: <strong className="tabular">{kit.seal.number}</strong>, since{" "}
          <Timestamp at={kit.seal.at} as="day" />.
        </p>
      )}
      {kit.sealMismatch && (
        <p className="kit-wrong">
          Read {kit.sealMismatch.seen || "no seal"} on <Timestamp at={kit.sealMismatch.at} as="day" />, where{" "}
          {kit.sealMismatch.expected} was expected.
        </p>
      )}
      {newest.length === 0 ? (
        <EmptyState title="No seal is on record" />
      ) : (
        <SealTable at={at} caption="Seals, newest first" seals={newest.slice(0, FIRST)} />
      )}
      {newest.length > FIRST && (
        <details className="kit-table">
          <summary>{newest.length - FIRST} older</summary>
          <SealTable at={at} caption="Older seals" seals={newest.slice(FIRST)} />
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
  return (
    <Table
      caption={caption}
      isCaptionHidden
      columns={columns(at)}
      rows={seals}
      rowKey={({ entry, what, number }) => `${entry} ${what} ${number}`}
    />
  );
}

/** The first seal of a kit was on it when it was taken on charge: nobody here saw it fitted. */
function sayWhat({ kit }: KitAtHand, { entry, what }: SealLine): string {
  return entry === kit.enrolled.entry ? "Read when taken on charge" : WHAT[what];
}

function columns(at: KitAtHand): readonly Column<SealLine>[] {
  const { view } = at;
  return [
    { key: "number", head: "Seal", cell: ({ number }) => <span className="tabular">{number || "none found"}</span> },
    { key: "what", head: "What", cell: (seal) => sayWhat(at, seal) },
    { key: "when", head: "When", cell: (seal) => <Timestamp at={seal.at} /> },
    { key: "who", head: "By", cell: ({ by }) => nameOf(view, by) },
  ];
}
