import { newestOf, type Pattern } from "#kit";
import { reportCard, type Proposal } from "#station";
import { useMemo } from "react";
import { useParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, ButtonRow, Page, Section } from "#web/parts/index.ts";
import { ToldOfPattern } from "#web/kit-view/starts/told-of.tsx";
import { NoSuchPattern } from "./no-such-pattern.tsx";
import { FindingsYears } from "./report/findings-years.tsx";
import { sayProposal, sayWanted } from "./report/report-words.ts";
import { PicturesTable } from "./report/pictures-table.tsx";
import { ChecksTable, LinesTable, MinutesTable, ModesTable } from "./report/report-tables.tsx";
import { WordsFirst } from "./words-first.tsx";
import "#web/kit-view/kit.css";
import "./pattern.css";
import { useWords } from "#web/language/index.ts";

/** A pattern's report card: what its lines found and took, and what the log would change. */
export default function ReportCardPage() {
  const { pattern: id = "" } = useParams<{ readonly pattern: string }>();
  const pattern = newestOf([...useStation().patterns.values()], id);
  return pattern ? <Report pattern={pattern} /> : <NoSuchPattern />;
}

function Report({ pattern }: { readonly pattern: Pattern }) {
  const words = useWords("patternReport");
  return (
    <Page title={words.title({ pattern: pattern.name })} back={{ to: "/year", label: words.yearPlanned() }}>
      <WordsFirst words={<output>{words.counting()}</output>}>
        <Counted pattern={pattern} />
      </WordsFirst>
    </Page>
  );
}

function Counted({ pattern }: { readonly pattern: Pattern }) {
  const words = useWords("patternReport");
  const { kits, retired, reports, casualties } = useStation();
  const card = useMemo(
    () => reportCard(pattern, [...kits, ...retired], reports.get(pattern.id) ?? [], casualties),
    [pattern, kits, retired, reports, casualties],
  );
  return (
    <>
      <p>{words.basis({ openings: card.openings, kits: card.kits })}</p>
      <ToldOfPattern pattern={pattern} />
      <Section id="proposals" title={words.wouldChange()}>
        <p>{sayWanted(card, words)}</p>
        <Proposals pattern={pattern} proposals={card.proposals} />
        <p className="quiet">{words.nothingByItself()}</p>
        <ButtonRow>
          <ButtonLink to={`/pattern/${pattern.id}/interval`}>{words.howOften()}</ButtonLink>
          <ButtonLink to={`/pattern/${pattern.id}/lives`}>{words.howLong()}</ButtonLink>
        </ButtonRow>
      </Section>
      <FindingsYears pattern={pattern} />
      <ChecksTable checks={card.checks} />
      <ModesTable openings={card.openings} modes={card.modes} unnamed={card.unnamed} together={card.together} />
      <LinesTable lines={card.lines} openings={card.openings} />
      <PicturesTable pictures={card.pictures} />
      <MinutesTable minutes={card.minutes} />
    </>
  );
}

function Proposals({ pattern, proposals }: { readonly pattern: Pattern; readonly proposals: readonly Proposal[] }) {
  const words = useWords("patternReport");
  const said = proposals.map((one) => ({ kind: one.kind, ...sayProposal(one, pattern, words) }));
  const of = (kind: Proposal["kind"]) => said.filter((one) => one.kind === kind);
  return (
    <>
      <ProposalList said={[...of("find-sooner"), ...of("reword")]} />
      <Folded title={words.restated} said={of("restate")} />
      <Folded title={words.askedLess} said={of("ask-less")} />
      <Folded title={words.kept} said={of("keep")} />
    </>
  );
}

interface Said {
  readonly what: string;
  readonly why: string;
}

interface FoldedProps {
  /** Their number in words. */ readonly title: (of: { readonly count: number }) => string;
  readonly said: readonly Said[];
}

/** Many of one sort, behind their number. */
function Folded({ title, said }: FoldedProps) {
  if (said.length === 0) return null;
  return (
    <details className="kit-table">
      <summary>{title({ count: said.length })}</summary>
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
