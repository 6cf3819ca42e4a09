import { drawnIn, visitKey, type Visit } from "#readiness";
import { mayWrite, visitResult, sayCounted } from "#station";
import { useMemo } from "react";
import { Link } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, ButtonRow, EmptyState, Page, Section, Timestamp } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { sayPlaces } from "./visit-at-hand.ts";
import "./visits.css";
import { useWords, withParts } from "#web/language/index.ts";

/** Visits of assessors: those that are on, what the others showed, and the way to where findings fall. */
export default function VisitsPage() {
  const frame = useWords("frame");
  const words = useWords("visits");
  const view = useStation();
  const on = view.visits.filter(({ ended }) => !ended);
  const over = view.visits.filter(({ ended }) => ended);
  return (
    <Page title={words.title()} back={{ to: "/people", label: frame.people() }}>
      <p>{words.what()}</p>
      <ButtonRow>
        {mayWrite(view.me.role, "visit-begun") && (
          <ButtonLink kind="primary" to="/visits/new">
            {words.begin()}
          </ButtonLink>
        )}
        <ButtonLink to="/visits/findings">{words.whereFall()}</ButtonLink>
      </ButtonRow>
      <Section title={words.now()}>
        {on.length === 0 ? <EmptyState title={words.noneOn()} /> : <Visits of={on} Row={VisitNow} />}
      </Section>
      <Section title={words.past()}>
        {over.length === 0 ? <EmptyState title={words.noneYet()} /> : <Visits of={over} Row={VisitOver} />}
      </Section>
    </Page>
  );
}

interface VisitsProps {
  readonly of: readonly Visit[];
  readonly Row: (props: { readonly visit: Visit }) => React.ReactNode;
}

function Visits({ of, Row }: VisitsProps) {
  return (
    <ul className="visit-list">
      {of.map((visit) => (
        <li key={visit.id}>
          <Row visit={visit} />
        </li>
      ))}
    </ul>
  );
}

function VisitNow({ visit }: { readonly visit: Visit }) {
  const words = useWords("visits");
  const view = useStation();
  const lines = drawnIn(visit);
  const left = lines.filter((line) => !visit.seen[visitKey(line)]).length;
  return (
    <>
      <span>
        {withParts(
          (marks) => words.nowLine({ ...marks, who: nameOf(view, visit.begun.by), left, lines: lines.length }),
          {
            places: <strong>{sayPlaces(view, visit)}</strong>,
            at: <Timestamp at={visit.begun.at} />,
          },
        )}
      </span>
      <ButtonLink to={`/visits/${visit.id}`}>{words.goOn()}</ButtonLink>
    </>
  );
}

function VisitOver({ visit }: { readonly visit: Visit }) {
  const words = useWords("visits");
  const view = useStation();
  const { agreed, missed } = useMemo(() => visitResult(visit, view), [visit, view]);
  const link = (
    <Link to={`/visits/${visit.id}`}>
      {withParts(({ day }) => words.dayPlaces({ day, places: sayPlaces(view, visit) }), {
        day: <Timestamp at={visit.begun.at} as="day" />,
      })}
    </Link>
  );
  const who = nameOf(view, visit.begun.by);
  const say = (mark: { readonly visit: string }) =>
    agreed
      ? words.overLine({ ...mark, who, agreed: sayCounted(agreed), missed: missed.length })
      : words.overNothing({ ...mark, who });
  return <span>{withParts(say, { visit: link })}</span>;
}
