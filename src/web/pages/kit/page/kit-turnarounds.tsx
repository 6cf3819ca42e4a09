import { Link } from "wouter";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { turnaroundsNewestFirst, type KitState, type Turnaround } from "#readiness";
import { ButtonLink, ButtonRow, EmptyState, sayInstant, Section, Timestamp } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf, type KitAtHand } from "#web/kit-view/at-hand.ts";
import { saySheet } from "#web/kit-view/sheet/sheet-words.ts";
import { writePrinted } from "#web/act/reading.ts";

const FIRST = 5;

/** Every turnaround, newest first, each with its record on screen and on paper. */
export function KitTurnarounds({ at }: { readonly at: KitAtHand }) {
  const words = useWords("kitHistory");
  const all = turnaroundsNewestFirst(at.kit);
  return (
    <Section id="turnarounds" title={words.turnarounds()}>
      {all.length === 0 ? (
        <EmptyState title={words.noneYet()}>
          <p>{words.noneYetMore()}</p>
        </EmptyState>
      ) : (
        <TurnaroundTable at={at} caption={words.turnaroundsNewest()} rows={all.slice(0, FIRST)} />
      )}
      <ToldTurnarounds at={at} />
      {all.length > FIRST && (
        <details className="kit-table">
          <summary>{words.older({ count: all.length - FIRST })}</summary>
          <TurnaroundTable at={at} caption={words.olderTurnarounds()} rows={all.slice(FIRST)} />
        </details>
      )}
      <ButtonRow>
        <ButtonLink to={`/pattern/${at.pattern.id}`}>{words.checksFound()}</ButtonLink>
        <ButtonLink to={`/pattern/${at.pattern.id}/lives?kit=${at.kit.id}`}>{words.howLong()}</ButtonLink>
      </ButtonRow>
    </Section>
  );
}

/** What a sheet or a book tells of the time before this log. */
function ToldTurnarounds({ at: { kit, view } }: { readonly at: KitAtHand }) {
  const words = useWords("kitHistory");
  const parts = useWords("parts");
  const telling = useWords("telling");
  const told = (kit.told ?? []).toSorted((one, other) => (one.day < other.day ? 1 : -1));
  if (told.length === 0) return null;
  return (
    <details className="kit-table">
      <summary>{words.told({ count: told.length })}</summary>
      <p>{words.toldMore()}</p>
      <ul className="kit-reasons" aria-label={words.toldList()}>
        {told.map(({ entry, sheet, by, ...one }) => (
          <li key={entry}>
            {sayTold(one, words, parts)}{" "}
            <span className="quiet">
              {words.takenIn({ sheet: saySheet(sheet, telling) ?? words.toldBy(), name: nameOf(view, by) })}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

type Told = Pick<NonNullable<KitState["told"]>[number], "day" | "doneBy" | "result" | "note">;

function sayTold({ day, doneBy, result, note }: Told, words: Words["kitHistory"], parts: Words["parts"]): string {
  const date = writePrinted(day, parts);
  const done = doneBy ? words.doneBy({ day: date, name: doneBy }) : date;
  const what = result ? words.resultOf({ what: done, result }) : done;
  return note === undefined ? what : words.noteOf({ what, note });
}

interface TurnaroundTableProps {
  readonly at: KitAtHand;
  readonly caption: string;
  readonly rows: readonly Turnaround[];
}

function TurnaroundTable({ at, caption, rows }: TurnaroundTableProps) {
  const words = useWords("kitHistory");
  return <Table caption={caption} isCaptionHidden columns={columns(at, words)} rows={rows} rowKey={({ id }) => id} />;
}

function columns({ kit, view }: KitAtHand, words: Words["kitHistory"]): readonly Column<Turnaround>[] {
  return [
    {
      key: "opened",
      head: words.opened(),
      cell: ({ id, opened }) => (
        <Link to={`/kit/${kit.id}/turnaround/${id}/record`}>
          <Timestamp at={opened.at} />
        </Link>
      ),
    },
    { key: "why", head: words.why(), cell: ({ because }) => sayWhy(because, words) },
    { key: "by", head: words.by(), cell: ({ opened }) => nameOf(view, opened.by) },
    { key: "closed", head: words.closed(), cell: ({ closed }) => <Closed closed={closed} /> },
    {
      key: "paper",
      head: words.paper(),
      cell: ({ id, opened }) => (
        <PaperLink
          look="quiet"
          href={`/api/paper/turnaround/${kit.id}/${id}.pdf`}
          name={`turnaround-${opened.at.slice(0, 10)}`}
          label={words.pdfOf({ at: opened.at })}
        >
          {words.pdf()}
        </PaperLink>
      ),
    },
  ];
}

const WHY: ReadonlyMap<string, "routine" | "returned" | "finding" | "becauseSeal" | "lapse"> = new Map([
  ["routine", "routine"],
  ["returned", "returned"],
  ["finding", "finding"],
  ["seal", "becauseSeal"],
  ["lapse", "lapse"],
]);

function sayWhy(because: string, words: Words["kitHistory"]): string {
  const key = WHY.get(because);
  return key ? words[key]() : because;
}

const HOW = { sealed: "closedSealed", grounded: "closedGrounded", "set-aside": "closedAside" } as const;

function Closed({ closed }: { readonly closed: Turnaround["closed"] | undefined }) {
  const words = useWords("kitHistory");
  if (!closed) return <strong>{words.openNow()}</strong>;
  const at = sayInstant(closed.at);
  if (closed.seal !== undefined) return words.closedSealedWith({ at, seal: closed.seal });
  return words[HOW[closed.how]]({ at });
}
