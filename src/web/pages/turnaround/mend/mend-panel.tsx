import { useState } from "react";
import { stepNamed } from "#kit";
import { proofSoFar, type CheckSoFar, type Finding } from "#readiness";
import { Button, ErrorBox, Notice, Section } from "#web/parts/index.ts";
import type { KitActs } from "#web/act/acts.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { nameFinding } from "#web/kit-view/ages.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { RemedyForm } from "#web/kit-view/mending/remedy-form.tsx";
import { sayRemedy } from "#web/kit-view/mending/remedy-words.ts";
import { sayEffect } from "#web/act/finding-choice.ts";

interface MendPanelProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly finding: Finding;
  /** The check on the screen. */
  readonly check: string | undefined;
  /** Asks it again. */
  readonly onAgain: () => void;
}

/** Mending at the line: what was done, then what proves it, and the finding closed once all of that was seen right. */
export function MendPanel(props: MendPanelProps) {
  const { open, finding } = props;
  const done = finding.remedies.filter(({ remedy }) => remedy.how !== "lived-with");
  const isToMend = done.length === 0 || proofSoFar(finding, open.pattern, open.turnaround).isRefuted;
  const [isMending, setMending] = useState(false);
  const { mode } = nameFinding(finding, open.pattern);
  return (
    <Section title={`Finding: ${mode}`}>
      <p className="answered-finding">{sayEffect(finding.effect, finding.limit)}</p>
      {done.map((one) => (
        <p key={one.entry}>
          <strong>{sayRemedy(one.remedy)}</strong>
        </p>
      ))}
      {!isToMend && <Proof {...props} />}
      {isMending ? (
        <RemedyForm key={finding.remedies.length} at={open} acts={props.acts} finding={finding} />
      ) : (
        <Button wide onPress={() => setMending(true)}>
          {isToMend ? "Mend it now: say what was done" : "More was done"}
        </Button>
      )}
    </Section>
  );
}

/** What the proof needs, check by check, and the way to each. */
function Proof({ open, acts, finding, check, onAgain }: MendPanelProps) {
  const saving = useSaving();
  const { checks, proof } = proofSoFar(finding, open.pattern, open.turnaround);
  return (
    <>
      <p>To prove it put right:</p>
      <ul className="finding-done">
        {checks.map((one) => (
          <li key={one.check.id}>
            {one.check.ask} <strong>{sayProof(one, stepNamed(open.pattern, one.step ?? "")?.line)}</strong>
          </li>
        ))}
      </ul>
      {proof === undefined && checks.some((one) => one.check.id === check && one.answered === undefined) && (
        <Button kind="primary" wide onPress={onAgain}>
          Prove it now: look again
        </Button>
      )}
      {proof && (
        <Notice title="All of it was found right" isNews>
          <Button kind="primary" wide onPress={() => void saving.save(() => acts.prove(proof))}>
            Close the finding
          </Button>
        </Notice>
      )}
      <ErrorBox error={saving.error} title="Not closed" />
    </>
  );
}

function sayProof({ answered }: CheckSoFar, line: number | undefined): string {
  if (answered?.answer === "seen") return "Found right";
  if (answered) return answered.answer === "wrong" ? "Still wrong" : "Not possible";
  return line === undefined ? "Still to do" : `Still to do, at line ${line}`;
}
