import { newestOf, type Pattern } from "#kit";
import { acceptOpenings, mayWrite, openingProposal, type OpeningProposal, type StatedCosts } from "#station";
import { useMemo } from "react";
import { useParams } from "wouter";
import { useKept } from "#web/act/use-kept.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, EmptyState, ErrorBox, Page, Section } from "#web/parts/index.ts";
import { useRefused } from "#web/parts/fields/use-refused.ts";
import { AcceptedPart } from "./interval/accepted-part.tsx";
import { CostsForm } from "./interval/costs-form.tsx";
import {
  sayApart,
  sayBest,
  sayCosts,
  sayEvery,
  sayEvidence,
  sayFlat,
  sayStanding,
  sayVerdict,
} from "./interval/interval-words.ts";
import { judgedIn, type Judged } from "./interval/judged.ts";
import { WeightPart } from "./interval/weight-part.tsx";
import { ToldOfPattern } from "#web/kit-view/starts/told-of.tsx";
import { NoSuchPattern } from "./no-such-pattern.tsx";
import { WordsFirst } from "./words-first.tsx";
import "#web/kit-view/kit.css";
import "./pattern.css";
import { useWords } from "#web/language/index.ts";

/** How often to open the kits of a pattern: what the log says of it, and a keeper's line that the plan then goes by. */
export default function IntervalPage() {
  const words = useWords("patternInterval");
  const { pattern: id = "" } = useParams<{ readonly pattern: string }>();
  const view = useStation();
  const pattern = newestOf([...view.patterns.values()], id);
  const isEarly = view.early !== undefined;
  if (!pattern) return <NoSuchPattern />;
  return (
    <Page title={words.title({ pattern: pattern.name })} back={{ to: "/year", label: words.yearPlanned() }}>
      <AcceptedPart pattern={pattern} />
      {isEarly ? (
        <EmptyState title={words.early()}>
          <p>{words.earlyMore()}</p>
        </EmptyState>
      ) : (
        <WordsFirst words={<output>{words.counting()}</output>}>
          <Proposed pattern={pattern} />
        </WordsFirst>
      )}
      <ButtonRow>
        <ButtonLink to={`/pattern/${pattern.id}`}>{words.reportCard()}</ButtonLink>
      </ButtonRow>
    </Page>
  );
}

const NOTHING: Judged = { stated: {} };

function Proposed({ pattern }: { readonly pattern: Pattern }) {
  const words = useWords("patternInterval");
  const view = useStation();
  const { value, change } = useKept(`interval.${pattern.id}`, NOTHING);
  const { weight, stated } = useMemo(() => judgedIn(value), [value]);
  const refused = useRefused();
  const proposal = useMemo(() => {
    const log = { kits: [...view.kits, ...view.retired], casualties: view.casualties, patterns: view.patterns };
    const asked = { now: `${view.today}T12:00:00Z`, nightHours: weight ?? 1000, policy: view.policy, stated };
    return openingProposal(pattern, log, asked);
  }, [pattern, view, weight, stated]);
  if (!proposal) {
    return (
      <EmptyState title={words.nothing()}>
        <p>{words.nothingMore()}</p>
        <ToldOfPattern pattern={pattern} />
      </EmptyState>
    );
  }
  return (
    <Section title={words.logSays()}>
      <p>
        {sayStanding(proposal, words)} {sayApart(proposal.evidence, words)}
      </p>
      <ToldOfPattern pattern={pattern} />
      <WeightPart
        weight={weight}
        onWeigh={(next) => change({ ...(next !== undefined && { weight: next }), stated })}
        refused={refused}
      />
      <CostsForm
        stated={stated}
        onState={(next) => change({ ...(weight !== undefined && { weight }), stated: next })}
        refused={refused}
      />
      {refused.isAny && <p>{words.correctCosts()}</p>}
      {weight !== undefined && !refused.isAny && (
        <Verdict pattern={pattern} proposal={proposal} nightHours={weight} stated={stated} />
      )}
      <Rests proposal={proposal} stated={stated} />
    </Section>
  );
}

interface VerdictProps {
  readonly pattern: Pattern;
  readonly proposal: OpeningProposal;
  readonly nightHours: number;
  readonly stated: StatedCosts;
}

function Verdict({ pattern, proposal, nightHours, stated }: VerdictProps) {
  const words = useWords("patternInterval");
  const { me } = useStation();
  const carryOut = useCarryOut();
  const saving = useSaving();
  const { verdict, standing } = proposal;
  const every = verdict.kind === "shorter" || verdict.kind === "longer" ? verdict.every : undefined;
  const accept = () =>
    every && carryOut((doing) => acceptOpenings(doing, pattern.id, every, { ...proposal, nightHours, stated }));
  return (
    <>
      <p className="interval-verdict">{sayVerdict(verdict, standing, words)}</p>
      <p>{sayBest(proposal, words)}</p>
      <p>{sayFlat(proposal, words)}</p>
      <p>{sayCosts(proposal, stated, words)}</p>
      <ErrorBox error={saving.error} title={words.notWritten()} />
      {every && mayWrite(me.role, "opening-interval-set") && (
        <div>
          <Button kind="primary" onPress={() => void saving.save(async () => accept())}>
            {words.accept({ every: sayEvery(every, words) })}
          </Button>
        </div>
      )}
    </>
  );
}

function Rests({ proposal, stated }: Pick<VerdictProps, "proposal" | "stated">) {
  const words = useWords("patternInterval");
  return (
    <details className="kit-table">
      <summary>{words.restsOn()}</summary>
      <ul>
        {sayEvidence(proposal.evidence, stated, words).map((said) => (
          <li key={said}>{said}</li>
        ))}
      </ul>
      <p className="quiet">{words.rounded()}</p>
      <p className="quiet">{words.proposalOnly()}</p>
    </details>
  );
}
