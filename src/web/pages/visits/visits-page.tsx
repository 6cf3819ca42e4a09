import { drawnIn, visitKey, type Visit } from "#readiness";
import { mayWrite, visitResult, sayCounted } from "#station";
import { useMemo } from "react";
import { Link } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, ButtonRow, EmptyState, Page, Section, Timestamp } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { sayPlaces } from "./visit-at-hand.ts";
import "./visits.css";

/** Visits of assessors: those that are on, what the others showed, and the way to where findings fall. */
export default function VisitsPage() {
  const view = useStation();
  const on = view.visits.filter(({ ended }) => !ended);
  const over = view.visits.filter(({ ended }) => ended);
  return (
    <Page title="Visits" back={{ to: "/people", label: "People" }}>
      <p>
        An assessor looks again at lines drawn by chance, without sight of what the keeper wrote. Then both are
        compared.
      </p>
      <ButtonRow>
        {mayWrite(view.me.role, "visit-begun") && (
          <ButtonLink kind="primary" to="/visits/new">
            Begin a visit
          </ButtonLink>
        )}
        <ButtonLink to="/visits/findings">Where findings fall</ButtonLink>
      </ButtonRow>
      <Section title="Now">
        {on.length === 0 ? <EmptyState title="No visit is on" /> : <Visits of={on} Row={VisitNow} />}
      </Section>
      <Section title="Past visits">
        {over.length === 0 ? <EmptyState title="None yet" /> : <Visits of={over} Row={VisitOver} />}
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
  const view = useStation();
  const lines = drawnIn(visit);
  const left = lines.filter((line) => !visit.seen[visitKey(line)]).length;
  return (
    <>
      <span>
        <strong>{sayPlaces(view, visit)}</strong>, begun <Timestamp at={visit.begun.at} /> by{" "}
        {nameOf(view, visit.begun.by)}: {left} of {lines.length} lines left
      </span>
      <ButtonLink to={`/visits/${visit.id}`}>Go on with this visit</ButtonLink>
    </>
  );
}

function VisitOver({ visit }: { readonly visit: Visit }) {
  const view = useStation();
  const { agreed, missed } = useMemo(() => visitResult(visit, view), [visit, view]);
  return (
    <span>
      <Link to={`/visits/${visit.id}`}>
        <Timestamp at={visit.begun.at} as="day" />, {sayPlaces(view, visit)}
      </Link>
      , {nameOf(view, visit.begun.by)}:{" "}
      {agreed ? `both say the same on ${sayCounted(agreed)}; ${missed.length} missed` : "nothing to compare"}
    </span>
  );
}
