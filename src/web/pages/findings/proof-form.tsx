import { useState } from "react";
import type { Check } from "#kit";
import { dateWantedBy, provingChecks, recordedFor } from "#readiness";
import { Button, ErrorBox, Notice } from "#web/parts/index.ts";
import { useKept } from "#web/act/use-kept.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { judgeProof, proofBody, repeat, type Proof } from "./proof.ts";
import { ProofCheck } from "./proof-check.tsx";
import type { ActingOnFinding } from "#web/kit-view/mending/about-finding.ts";

/** Repeats just the checks that find the mode; the finding closes only when every one is seen right. */
export function ProofForm({ at, acts, finding }: ActingOnFinding) {
  const checks = provingChecks(finding, at.pattern);
  const saving = useSaving();
  const kept = useKept<Proof>(`proof.${finding.id}.${finding.remedies.length}`, {});
  const [again, setAgain] = useState<string>();
  const verdict = judgeProof(checks, kept.value);
  const open = checks.find((check) => check.id === again) ?? checks.find((check) => !kept.value[check.id]);
  const save = async () => {
    const body = proofBody(finding.id, checks, kept.value);
    const inside = at.kit.turnaround ? { turnaround: at.kit.turnaround.id } : {};
    if (await saving.save(() => acts.prove({ ...body, ...inside }))) kept.clear();
  };
  if (checks.length === 0) return <p>The pattern has no check for this. Have its owner add one.</p>;
  return (
    <div className="finding-form">
      <p>
        Repeat {checks.length === 1 ? "the check that finds it" : `the ${checks.length} checks that find it`}. The
        finding closes only if all is found right.
      </p>
      <Given checks={checks} proof={kept.value} onAgain={setAgain} />
      {open && (
        <ProofCheck
          key={open.id}
          check={open}
          finding={finding}
          today={at.view.today}
          wanted={dateWantedBy(open, at.pattern, at.view.policy, at.view.today)}
          recorded={recordedFor(open, at.kit)}
          onAnswer={(answer, value) => {
            kept.change(repeat(kept.value, open, answer, value));
            setAgain(undefined);
          }}
        />
      )}
      {verdict === "not-right" && (
        <Notice tone="wrong" title="Not proved" isNews>
          <p>Save it as it is: the finding stays open, and more has to be done.</p>
        </Notice>
      )}
      <ErrorBox error={saving.error} title="Not saved" />
      {verdict !== "incomplete" && !open && (
        <Button kind="primary" wide onPress={() => void save()}>
          {verdict === "right" ? "All found right: close the finding" : "Save: not put right yet"}
        </Button>
      )}
    </div>
  );
}

interface GivenProps {
  readonly checks: readonly Check[];
  readonly proof: Proof;
  readonly onAgain: (check: string) => void;
}

const WORDS = { seen: "Found right", wrong: "Still wrong", "not-possible": "Not possible" } as const;

function Given({ checks, proof, onAgain }: GivenProps) {
  const given = checks.filter((check) => proof[check.id]);
  return (
    <ul className="finding-done">
      {given.map((check) => (
        <li key={check.id}>
          {check.ask} <strong>{WORDS[proof[check.id]?.answer ?? "wrong"]}</strong>{" "}
          <Button kind="quiet" onPress={() => onAgain(check.id)} label={`Again: ${check.ask}`}>
            Again
          </Button>
        </li>
      ))}
    </ul>
  );
}
