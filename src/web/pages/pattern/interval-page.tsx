import { newestOf, type Pattern } from "#kit";
import { acceptOpenings, mayWrite, openingProposal, type OpeningProposal, type StatedCosts } from "#station";
import { useMemo } from "react";
import { useParams } from "wouter";
import { useKept } from "#web/act/use-kept.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, EmptyState, ErrorBox, Page, Section } from "#web/parts/index.ts";
import { useRefused } from "#web/parts/fields/use-refused.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { AcceptedPart } from "./interval/accepted-part.tsx";
import { CostsForm } from "./interval/costs-form.tsx";
import {
  sayBest,
  sayCosts,
  sayEvery,
  sayEvidence,
  sayFlat,
  sayStanding,
  sayVerdict,
} from "./interval/interval-words.ts";
import { judgedIn, WEIGHTS, type Judged } from "./interval/judged.ts";
import { NoSuchPattern } from "./no-such-pattern.tsx";
import "#web/kit-view/kit.css";
import "./pattern.css";

/** How often to open the kits of a pattern: what the log says of it, and a keeper's line that the plan then goes by. */
export default function IntervalPage() {
  const { pattern: id = "" } = useParams<{ readonly pattern: string }>();
  const pattern = newestOf([...useStation().patterns.values()], id);
  if (!pattern) return <NoSuchPattern />;
  return (
    <Page title={`How often to open: ${pattern.name}`} back={{ to: "/year", label: "The year planned" }}>
      <AcceptedPart pattern={pattern} />
      <Proposed pattern={pattern} />
      <ButtonRow>
        <ButtonLink to={`/pattern/${pattern.id}`}>Report card of the pattern</ButtonLink>
      </ButtonRow>
    </Page>
  );
}

const NOTHING: Judged = { stated: {} };

function Proposed({ pattern }: { readonly pattern: Pattern }) {
  const view = useStation();
  const { value, change } = useKept(`interval.${pattern.id}`, NOTHING);
  const { weight, stated } = useMemo(() => judgedIn(value), [value]);
  const refused = useRefused();
  const proposal = useMemo(() => {
    const log = { kits: [...view.kits, ...view.retired], casualties: view.casualties, patterns: view.patterns };
    const asked = { now: `${view.today}T12:00:00Z`, nightHours: Number(weight ?? 1000), policy: view.policy, stated };
    return openingProposal(pattern, log, asked);
  }, [pattern, view, weight, stated]);
  if (!proposal) {
    return (
      <EmptyState title="Nothing to go by yet">
        <p>No kit of this pattern has lain closed between two openings. One opening of each would be a beginning.</p>
      </EmptyState>
    );
  }
  return (
    <Section title="What the log says">
      <p>{sayStanding(proposal)}</p>
      <PickRow
        label="One kit that fails on the night: how many hours of work would sparing that be worth?"
        hint="This is your judgement; the answer turns on it."
        options={WEIGHTS}
        picked={weight}
        onPick={(picked) => change({ weight: picked, stated })}
      />
      <CostsForm
        stated={stated}
        onState={(next) => change({ ...(weight && { weight }), stated: next })}
        refused={refused}
      />
      {refused.isAny && <p>Correct the costs first: a figure among them is not taken.</p>}
      {weight && !refused.isAny && (
        <Verdict pattern={pattern} proposal={proposal} nightHours={Number(weight)} stated={stated} />
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
  const { me } = useStation();
  const carryOut = useCarryOut();
  const saving = useSaving();
  const { verdict, standing } = proposal;
  const every = verdict.kind === "shorter" || verdict.kind === "longer" ? verdict.every : undefined;
  const accept = () =>
    every && carryOut((doing) => acceptOpenings(doing, pattern.id, every, { ...proposal, nightHours, stated }));
  return (
    <>
      <p className="interval-verdict">{sayVerdict(verdict, standing)}</p>
      <p>{sayBest(proposal)}</p>
      <p>{sayFlat(proposal)}</p>
      <p>{sayCosts(proposal, stated)}</p>
      <ErrorBox error={saving.error} title="Not written down" />
      {every && mayWrite(me.role, "opening-interval-set") && (
        <div>
          <Button kind="primary" onPress={() => void saving.save(async () => accept())}>
            Accept {sayEvery(every)} for the plan
          </Button>
        </div>
      )}
    </>
  );
}

function Rests({ proposal, stated }: Pick<VerdictProps, "proposal" | "stated">) {
  return (
    <details className="kit-table">
      <summary>What that rests on</summary>
      <ul>
        {sayEvidence(proposal.evidence, stated).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <p className="quiet">
        A proposal, no more: it knows no fault that no check sees, and none that grows with age. The rule of the
        unit&apos;s own manual stands first, and nothing here is ever longer than it.
      </p>
    </details>
  );
}
