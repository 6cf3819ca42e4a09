import type { Words } from "#words";
import { itemNamed, stepNamed, stepOfCheck } from "#kit";
import { proofSoFar, type CheckSoFar, type Finding } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonLink, ErrorBox, Notice, Section } from "#web/parts/index.ts";
import type { KitActs } from "#web/act/acts.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { nameFinding } from "#web/kit-view/ages.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { useMending } from "#web/kit-view/mending/about-finding.ts";
import { RemedyForm } from "#web/kit-view/mending/remedy-form.tsx";
import { sayRemedy } from "#web/kit-view/mending/remedy-words.ts";
import { useInSight } from "./use-in-sight.ts";
import { sayEffect } from "#web/act/finding-choice.ts";

interface MendPanelProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly finding: Finding;
  /** The check on the screen. */
  readonly check: string | undefined;
  /** Raised just now: it comes in sight with its ways out. */
  readonly isNews: boolean;
  /** Asks it again. */
  readonly onAgain: () => void;
}

/** Mending at the line: what was done, then what proves it, and the finding closed once all of that was seen right. */
export function MendPanel(props: MendPanelProps) {
  const mendingWords = useWords("mending");
  const lineWords = useWords("kitLine");
  const { open, finding } = props;
  const words = useWords("turnaroundFit");
  const done = finding.remedies.filter(({ remedy }) => remedy.how !== "lived-with");
  const isToMend = done.length === 0 || proofSoFar(finding, open.pattern, open.turnaround).isRefuted;
  const mending = useMending(finding, "open", { isOpen: false });
  const isMending = mending.value.isOpen;
  const whole = itemNamed(open.pattern, finding.item)?.quantity ?? 1;
  const { mode } = nameFinding(finding, open.pattern, lineWords);
  const panel = useInSight<HTMLDivElement>(isMending ? "mending" : props.isNews && "raised");
  return (
    <div ref={panel}>
      <Section title={words.findingMode({ mode })}>
        <p className="answered-finding">{sayEffect(finding.effect, lineWords, finding.limit)}</p>
        {done.map((one) => (
          <p key={one.entry}>
            <strong>{sayRemedy(one.remedy, whole, mendingWords)}</strong>
          </p>
        ))}
        {!isToMend && <Proof {...props} />}
        {isMending ? (
          <RemedyForm key={finding.remedies.length} at={open} acts={props.acts} finding={finding} />
        ) : (
          <Button wide onPress={() => mending.change({ isOpen: true })}>
            {isToMend ? words.mendNow() : words.moreDone()}
          </Button>
        )}
      </Section>
    </div>
  );
}

/** What the proof needs, check by check, and the way to each. */
function Proof({ open, acts, finding, check, onAgain }: MendPanelProps) {
  const saving = useSaving();
  const words = useWords("turnaroundFit");
  const { checks, proof } = proofSoFar(finding, open.pattern, open.turnaround);
  const first = checks.find(({ answered }) => answered === undefined);
  const isNext = checks.some((one) => one.check.id === check && !one.answered && one.step === first?.step);
  const next = first && placeOf(first, open);
  const here = stepOfCheck(open.pattern, check ?? "")?.line ?? 0;
  return (
    <>
      <p>{words.toProve()}</p>
      <ul className="finding-done">
        {checks.map((one) => (
          <li key={one.check.id}>
            {one.check.ask} <strong>{sayProof(one, stepNamed(open.pattern, one.step ?? "")?.line, words)}</strong>
          </li>
        ))}
      </ul>
      {proof === undefined && isNext && (
        <Button kind="primary" wide onPress={onAgain}>
          {words.proveNow()}
        </Button>
      )}
      {next && !isNext && next.line < here && (
        <ButtonLink wide to={`/kit/${open.kit.id}/turnaround?${next.query}`}>
          {words.proveAt({ line: next.line })}
        </ButtonLink>
      )}
      {proof && (
        <Notice title={words.allRight()} isNews>
          <Button kind="primary" wide onPress={() => void saving.save(() => acts.prove(proof))}>
            {words.closeFinding()}
          </Button>
        </Notice>
      )}
      <ErrorBox error={saving.error} title={words.notClosed()} />
    </>
  );
}

/** Where the first check still to be made is asked: a later line proves nothing before it. */
function placeOf({ check, step }: CheckSoFar, { pattern }: OpenKit) {
  const line = stepNamed(pattern, step ?? "")?.line;
  if (line === undefined) return undefined;
  return { line, query: new URLSearchParams({ line: String(line), ask: `${step}/${check.id}` }).toString() };
}

function sayProof({ answered }: CheckSoFar, line: number | undefined, words: Words["turnaroundFit"]): string {
  if (answered?.answer === "seen") return words.proofRight();
  if (answered) return answered.answer === "wrong" ? words.proofWrong() : words.proofNotPossible();
  return line === undefined ? words.proofToDo() : words.proofToDoAt({ line });
}
