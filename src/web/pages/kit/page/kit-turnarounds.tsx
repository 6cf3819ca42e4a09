import { Link } from "wouter";
import { turnaroundsNewestFirst, type Turnaround } from "#readiness";
import { ButtonLink, ButtonRow, EmptyState, sayCount, Section, Timestamp } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf, type KitAtHand } from "#web/kit-view/at-hand.ts";
import { saySheet } from "#web/kit-view/sheet/sheet-words.ts";
import { writePrinted } from "#web/act/reading.ts";

const FIRST = 5;

/** Every turnaround, newest first, each with its record on screen and on paper. */
export function KitTurnarounds({ at }: { readonly at: KitAtHand }) {
  const all = turnaroundsNewestFirst(at.kit);
  return (
    <Section id="turnarounds" title="Turnarounds">
      {all.length === 0 ? (
        <EmptyState title="None yet">
          <p>A new kit needs one whole turnaround before it can stand ready.</p>
        </EmptyState>
      ) : (
        <TurnaroundTable at={at} caption="Turnarounds, newest first" rows={all.slice(0, FIRST)} />
      )}
      <ToldTurnarounds at={at} />
      {all.length > FIRST && (
        <details className="kit-table">
          <summary>{all.length - FIRST} older</summary>
          <TurnaroundTable at={at} caption="Older turnarounds" rows={all.slice(FIRST)} />
        </details>
      )}
      <ButtonRow>
        <ButtonLink to={`/pattern/${at.pattern.id}`}>What its pattern&apos;s checks found</ButtonLink>
        <ButtonLink to={`/pattern/${at.pattern.id}/lives?kit=${at.kit.id}`}>How long its things last</ButtonLink>
      </ButtonRow>
    </Section>
  );
}

/** What a sheet or a book tells of the time before this log. */
function ToldTurnarounds({ at: { kit, view } }: { readonly at: KitAtHand }) {
  const told = (kit.told ?? []).toSorted((one, other) => (one.day < other.day ? 1 : -1));
  if (told.length === 0) return null;
  return (
    <details className="kit-table">
      <summary>{sayCount(told.length, "turnaround")} told of, before this log</summary>
      <p>Statements, not proofs: no kit is ready by them.</p>
      <ul className="kit-reasons" aria-label="Turnarounds told of">
        {told.map(({ entry, day, doneBy, result, note, sheet, by }) => (
          <li key={entry}>
            <strong>{writePrinted(day)}</strong>
            {[doneBy && ` by ${doneBy}`, result && `: ${result}`].filter(Boolean).join("")}
            {note !== undefined && `. ${note}`}{" "}
            <span className="quiet">
              {saySheet(sheet) ?? "told"}, taken in by {nameOf(view, by)}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

interface TurnaroundTableProps {
  readonly at: KitAtHand;
  readonly caption: string;
  readonly rows: readonly Turnaround[];
}

function TurnaroundTable({ at, caption, rows }: TurnaroundTableProps) {
  return <Table caption={caption} isCaptionHidden columns={columns(at)} rows={rows} rowKey={({ id }) => id} />;
}

function columns({ kit, view }: KitAtHand): readonly Column<Turnaround>[] {
  return [
    {
      key: "opened",
      head: "Opened",
      cell: ({ id, opened }) => (
        <Link to={`/kit/${kit.id}/turnaround/${id}/record`}>
          <Timestamp at={opened.at} />
        </Link>
      ),
    },
    { key: "why", head: "Why", cell: ({ because }) => WHY[because] ?? because },
    { key: "by", head: "By", cell: ({ opened }) => nameOf(view, opened.by) },
    { key: "closed", head: "Closed", cell: ({ closed }) => <Closed closed={closed} /> },
    {
      key: "paper",
      head: "Paper",
      cell: ({ id, opened }) => (
        <PaperLink
          look="quiet"
          href={`/api/paper/turnaround/${kit.id}/${id}.pdf`}
          name={`turnaround-${opened.at.slice(0, 10)}`}
          label={`PDF of the turnaround of ${opened.at}`}
        >
          PDF
        </PaperLink>
      ),
    },
  ];
}

const WHY: Readonly<Record<string, string>> = {
  routine: "Routine",
  returned: "Back from a vessel",
  finding: "To put a finding right",
  seal: "The seal",
  lapse: "Something runs out",
};

const HOW = { sealed: "sealed", grounded: "as grounded", "set-aside": "set aside" } as const;

function Closed({ closed }: { readonly closed: Turnaround["closed"] | undefined }) {
  if (!closed) return <strong>Open now</strong>;
  return (
    <>
      <Timestamp at={closed.at} />, {HOW[closed.how]}
      {closed.seal !== undefined && (
        <>
          {" "}
          with <span className="tabular">{closed.seal}</span>
        </>
      )}
    </>
  );
}
