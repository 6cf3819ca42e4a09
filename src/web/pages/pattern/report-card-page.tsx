import { newestOf, type Pattern } from "#kit";
import { reportCard, type Proposal } from "#station";
import { useMemo } from "react";
import { useParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, ButtonRow, Page, Section } from "#web/parts/index.ts";
import { NoSuchPattern } from "./no-such-pattern.tsx";
import { FindingsYears } from "./report/findings-years.tsx";
import { sayBasis, sayProposal, sayWanted } from "./report/report-words.ts";
import { ChecksTable, LinesTable, MinutesTable, ModesTable } from "./report/report-tables.tsx";
import "#web/kit-view/kit.css";
import "./pattern.css";

/** A pattern's report card: what its lines found and took, and what the log would change. */
export default function ReportCardPage() {
  const { pattern: id = "" } = useParams<{ readonly pattern: string }>();
  const pattern = newestOf([...useStation().patterns.values()], id);
  return pattern ? <Report pattern={pattern} /> : <NoSuchPattern />;
}

function Report({ pattern }: { readonly pattern: Pattern }) {
  const { kits, retired, reports } = useStation();
  const card = useMemo(
    () => reportCard(pattern, [...kits, ...retired], reports.get(pattern.id) ?? []),
    [pattern, kits, retired, reports],
  );
  return (
    <Page title={`Report card: ${pattern.name}`} back={{ to: "/year", label: "The year planned" }}>
      <p>{sayBasis(card)}</p>
      <Section id="proposals" title="What the log would change">
        <p>{sayWanted(card)}</p>
        <Proposals pattern={pattern} proposals={card.proposals} />
        <p className="quiet">
          Nothing changes by itself: whoever keeps the pattern decides, and a changed pattern is a new version. The
          unit's own manual stands first.
        </p>
        <ButtonRow>
          <ButtonLink to={`/pattern/${pattern.id}/interval`}>How often to open it</ButtonLink>
          <ButtonLink to={`/pattern/${pattern.id}/lives`}>How long things last</ButtonLink>
        </ButtonRow>
      </Section>
      <FindingsYears pattern={pattern} />
      <ChecksTable checks={card.checks} />
      <ModesTable modes={card.modes} />
      <LinesTable lines={card.lines} />
      <MinutesTable minutes={card.minutes} />
    </Page>
  );
}

function Proposals({ pattern, proposals }: { readonly pattern: Pattern; readonly proposals: readonly Proposal[] }) {
  const said = proposals.map((one) => ({ kind: one.kind, ...sayProposal(one, pattern) }));
  const of = (kind: Proposal["kind"]) => said.filter((one) => one.kind === kind);
  return (
    <>
      <ProposalList said={[...of("find-sooner"), ...of("reword")]} />
      <Folded
        one="line whose minutes could be stated anew"
        many="lines whose minutes could be stated anew"
        said={of("restate")}
      />
      <Folded
        one="check that could be asked less often"
        many="checks that could be asked less often"
        said={of("ask-less")}
      />
      <Folded
        one="check that found nothing yet and stays"
        many="checks that found nothing yet and stay"
        said={of("keep")}
      />
    </>
  );
}

interface Said {
  readonly what: string;
  readonly why: string;
}

/** Many of one sort, behind their number. */
function Folded({ one, many, said }: { readonly one: string; readonly many: string; readonly said: readonly Said[] }) {
  if (said.length === 0) return null;
  return (
    <details className="kit-table">
      <summary>
        {said.length} {said.length === 1 ? one : many}
      </summary>
      <ProposalList said={said} />
    </details>
  );
}

function ProposalList({ said }: { readonly said: readonly Said[] }) {
  if (said.length === 0) return null;
  return (
    <ul className="proposals">
      {said.map(({ what, why }) => (
        <li key={what}>
          <strong>{what}</strong>
          <p>{why}</p>
        </li>
      ))}
    </ul>
  );
}
