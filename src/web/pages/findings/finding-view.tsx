import { formatDate, parseDate } from "#base";
import { itemNamed, modeNamed, stepNamed } from "#kit";
import { useRecorder, useStation } from "#web/device/index.ts";
import { ButtonLink, EmptyState, Notice, Page, Section, Timestamp } from "#web/parts/index.ts";
import { PhotoStrip } from "#web/parts/photo-strip.tsx";
import { KitActs } from "#web/act/acts.ts";
import { findKit, nameOf, type KitAtHand } from "#web/kit-view/at-hand.ts";
import { sayEffect } from "#web/act/finding-choice.ts";
import type { AboutFinding } from "#web/kit-view/mending/about-finding.ts";
import { nameFinding, progressOf } from "#web/kit-view/ages.ts";
import { ProofForm } from "./proof-form.tsx";
import { RemedyForm } from "#web/kit-view/mending/remedy-form.tsx";
import { sayRemedy } from "#web/kit-view/mending/remedy-words.ts";

/** One finding: what was seen, what was done about it, and what comes next. */
export function FindingPage(wanted: { readonly kit: string; readonly finding: string }) {
  const at = findKit(useStation(), wanted.kit);
  const finding = at?.kit.findings.find((one) => one.id === wanted.finding);
  const back = { to: "/findings", label: "Findings" };
  if (!at || !finding) {
    return (
      <Page title="No such finding" back={back}>
        <EmptyState title="This device knows no such finding" />
      </Page>
    );
  }
  const { mode } = nameFinding(finding, at.pattern);
  return (
    <Page title={mode} back={at.kit.turnaround ? { to: `/kit/${at.kit.id}/turnaround`, label: "Turnaround" } : back}>
      <Facts at={at} finding={finding} />
      <Done at={at} finding={finding} />
      <Next at={at} finding={finding} />
    </Page>
  );
}

function Facts({ at, finding }: AboutFinding) {
  const { kit, pattern, view } = at;
  const line = finding.step === undefined ? undefined : stepNamed(pattern, finding.step)?.line;
  const first = modeNamed(pattern, finding.mode)?.remedy;
  return (
    <>
      <dl className="finding-facts">
        <dt>Kit</dt>
        <dd>{kit.name}</dd>
        <dt>It means</dt>
        <dd>{sayEffect(finding.effect, finding.limit)}</dd>
        <dt>Raised</dt>
        <dd>
          <Timestamp at={finding.raised.at} /> by {nameOf(view, finding.raised.by)}
          {line !== undefined && `, at line ${line}`}
        </dd>
        {finding.note !== undefined && (
          <>
            <dt>Note</dt>
            <dd>{finding.note}</dd>
          </>
        )}
        {first !== undefined && (
          <>
            <dt>First remedy</dt>
            <dd>{first}</dd>
          </>
        )}
      </dl>
      <PhotoStrip photos={finding.photos} label="Finding" />
    </>
  );
}

/** What was done about it so far, oldest first. */
function Done({ at, finding }: AboutFinding) {
  if (finding.remedies.length === 0) return null;
  return (
    <Section title="Done about it">
      <ul className="finding-done">
        {finding.remedies.map((one) => (
          <li key={one.entry}>
            <strong>{sayRemedy(one.remedy)}</strong>{" "}
            <span className="quiet">
              <Timestamp at={one.at} /> by {nameOf(at.view, one.by)}
            </span>
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** What comes next: a remedy, its proof, or nothing. */
function Next({ at, finding }: AboutFinding) {
  const recorder = useRecorder();
  const acts = new KitActs(recorder, at.view, at.kit);
  const progress = progressOf(finding, at.view.today);
  if (progress === "closed" && finding.closed) {
    return (
      <Notice title="Closed" isNews>
        <p>
          Proved <Timestamp at={finding.closed.at} /> by {nameOf(at.view, finding.closed.by)}.
        </p>
        <WayOn at={at} />
      </Notice>
    );
  }
  return (
    <>
      {!at.kit.turnaround && <Sealed at={at} finding={finding} />}
      {progress === "lived-with" && finding.livedWith && (
        <Notice tone="attention" title={`Lived with until ${formatDate(parseDate(finding.livedWith.until))}`}>
          <p>
            {finding.livedWith.name}: {finding.livedWith.limit}
          </p>
        </Notice>
      )}
      {progress === "needs-proof" && (
        <Section title="Prove it">
          <ProofForm key={finding.remedies.length} at={at} acts={acts} finding={finding} />
        </Section>
      )}
      <Section title={progress === "needs-proof" ? "Or more was done" : "Put it right"}>
        <RemedyForm key={finding.remedies.length} at={at} acts={acts} finding={finding} />
      </Section>
    </>
  );
}

/** Where the work goes on: the open turnaround, or else the kit. */
function WayOn({ at }: { readonly at: KitAtHand }) {
  const { id, name, turnaround } = at.kit;
  if (!turnaround) return <ButtonLink to={`/kit/${id}`}>Go to {name}</ButtonLink>;
  return <ButtonLink to={`/kit/${id}/turnaround`}>Back to the turnaround of {name}</ButtonLink>;
}

/** A finding inside a sealed container is put right in a turnaround. */
function Sealed({ at, finding }: AboutFinding) {
  const item = itemNamed(at.pattern, finding.item)?.name ?? "it";
  return (
    <Notice tone="attention" title={`${at.kit.name} is closed`}>
      <p>If {item} is inside, open the kit for a turnaround first: its seal is broken by the work.</p>
      <ButtonLink to={`/kit/${at.kit.id}/turnaround`}>Open the kit</ButtonLink>
    </Notice>
  );
}
