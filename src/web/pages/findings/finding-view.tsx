import { parseDate } from "#base";
import { useReady, useWords } from "#web/language/index.ts";
import { itemNamed, modeNamed, stepNamed } from "#kit";
import { useRecorder, useStation } from "#web/device/index.ts";
import { ButtonLink, EmptyState, Notice, Page, sayDate, sayInstant, Section } from "#web/parts/index.ts";
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
  useReady("act");
  const words = useWords("findings");
  const frame = useWords("frame");
  const lineWords = useWords("kitLine");
  const at = findKit(useStation(), wanted.kit);
  const finding = at?.kit.findings.find((one) => one.id === wanted.finding);
  const back = { to: "/findings", label: frame.findings() };
  if (!at || !finding) {
    return (
      <Page title={words.noSuch()} back={back}>
        <EmptyState title={words.noSuchNews()} />
      </Page>
    );
  }
  const { mode } = nameFinding(finding, at.pattern, lineWords);
  return (
    <Page
      title={mode}
      back={at.kit.turnaround ? { to: `/kit/${at.kit.id}/turnaround`, label: words.turnaround() } : back}
    >
      <Facts at={at} finding={finding} />
      <Done at={at} finding={finding} />
      <Next at={at} finding={finding} />
    </Page>
  );
}

function Facts({ at, finding }: AboutFinding) {
  const words = useWords("findings");
  const lineWords = useWords("kitLine");
  const { kit, pattern, view } = at;
  const line = finding.step === undefined ? undefined : stepNamed(pattern, finding.step)?.line;
  const first = modeNamed(pattern, finding.mode)?.remedy;
  const raised = { at: sayInstant(finding.raised.at), name: nameOf(view, finding.raised.by) };
  return (
    <>
      <dl className="finding-facts">
        <dt>{words.kit()}</dt>
        <dd>{kit.name}</dd>
        <dt>{words.means()}</dt>
        <dd>{sayEffect(finding.effect, lineWords, finding.limit)}</dd>
        <dt>{words.raised()}</dt>
        <dd>{line === undefined ? words.raisedBy(raised) : words.raisedAtLine({ ...raised, line })}</dd>
        {finding.note !== undefined && (
          <>
            <dt>{words.note()}</dt>
            <dd>{finding.note}</dd>
          </>
        )}
        {first !== undefined && (
          <>
            <dt>{words.firstRemedy()}</dt>
            <dd>{first}</dd>
          </>
        )}
      </dl>
      <PhotoStrip photos={finding.photos} label={words.finding()} />
    </>
  );
}

/** What was done about it so far, oldest first. */
function Done({ at, finding }: AboutFinding) {
  const mendingWords = useWords("mending");
  const words = useWords("findings");
  const whole = itemNamed(at.pattern, finding.item)?.quantity ?? 1;
  if (finding.remedies.length === 0) return null;
  return (
    <Section title={words.done()}>
      <ul className="finding-done">
        {finding.remedies.map((one) => (
          <li key={one.entry}>
            <strong>{sayRemedy(one.remedy, whole, mendingWords)}</strong>{" "}
            <span className="quiet">{words.raisedBy({ at: sayInstant(one.at), name: nameOf(at.view, one.by) })}</span>
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** What comes next: a remedy, its proof, or nothing. */
function Next({ at, finding }: AboutFinding) {
  const words = useWords("findings");
  const recorder = useRecorder();
  const acts = new KitActs(recorder, at.view, at.kit);
  const progress = progressOf(finding, at.view.today);
  if (progress === "closed" && finding.closed) {
    return (
      <Notice title={words.closed()} isNews>
        <p>{words.proved({ at: sayInstant(finding.closed.at), name: nameOf(at.view, finding.closed.by) })}</p>
        <WayOn at={at} />
      </Notice>
    );
  }
  return (
    <>
      {!at.kit.turnaround && <Sealed at={at} finding={finding} />}
      {progress === "lived-with" && finding.livedWith && (
        <Notice tone="attention" title={words.livedWith({ day: sayDate(parseDate(finding.livedWith.until)) })}>
          <p>
            {finding.livedWith.name}: {finding.livedWith.limit}
          </p>
        </Notice>
      )}
      {progress === "needs-proof" && (
        <Section title={words.proveIt()}>
          <ProofForm key={finding.remedies.length} at={at} acts={acts} finding={finding} />
        </Section>
      )}
      <Section title={progress === "needs-proof" ? words.orMore() : words.putRight()}>
        <RemedyForm key={finding.remedies.length} at={at} acts={acts} finding={finding} />
      </Section>
    </>
  );
}

/** Where the work goes on: the open turnaround, or else the kit. */
function WayOn({ at }: { readonly at: KitAtHand }) {
  const words = useWords("findings");
  const { id, name, turnaround } = at.kit;
  if (!turnaround) return <ButtonLink to={`/kit/${id}`}>{words.goToKit({ kit: name })}</ButtonLink>;
  return <ButtonLink to={`/kit/${id}/turnaround`}>{words.backToTurnaround({ kit: name })}</ButtonLink>;
}

/** A finding inside a sealed container is put right in a turnaround. */
function Sealed({ at, finding }: AboutFinding) {
  const words = useWords("findings");
  const item = itemNamed(at.pattern, finding.item)?.name ?? words.it();
  return (
    <Notice tone="attention" title={words.isClosed({ kit: at.kit.name })}>
      <p>{words.openFirst({ item })}</p>
      <ButtonLink to={`/kit/${at.kit.id}/turnaround`}>{words.openKit()}</ButtonLink>
    </Notice>
  );
}
