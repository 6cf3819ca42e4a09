import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { stepNamed } from "#kit";
import { dateWantedBy, recordedFor } from "#readiness";
import { Button, ErrorBox, Notice } from "#web/parts/index.ts";
import { useKept } from "#web/act/use-kept.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { joined, judgeProof, proofBegun, proofBody, repeat, upTo, type Proof, type ProofBegun } from "./proof.ts";
import { ProofCheck } from "./proof-check.tsx";
import type { ActingOnFinding } from "#web/kit-view/mending/about-finding.ts";

/**
 * Repeats the checks that the proof needs, but for those that the open turnaround found right since; the finding closes
 * only when every one is seen right. In the pattern's order: an earlier line made again asks the later ones again.
 */
export function ProofForm({ at, acts, finding }: ActingOnFinding) {
  const words = useWords("findings");
  const begun = proofBegun(finding, at.pattern, at.kit.turnaround);
  const checks = begun.checks.map(({ check }) => check);
  const saving = useSaving();
  const kept = useKept<Proof>(`proof.${finding.id}.${finding.remedies.length}.${begun.newest ?? ""}`, {});
  const [again, setAgain] = useState<string>();
  const proof = joined(begun, kept.value);
  const verdict = judgeProof(checks, proof);
  const open = checks.find((check) => check.id === again) ?? checks.find((check) => !proof[check.id]);
  const save = async () => {
    const body = proofBody(finding.id, checks, proof);
    const inside = at.kit.turnaround ? { turnaround: at.kit.turnaround.id } : {};
    if (await saving.save(() => acts.prove({ ...body, ...inside }))) kept.clear();
  };
  if (checks.length === 0) return <p>{words.noCheck()}</p>;
  return (
    <div className="finding-form">
      <p>{words.repeat({ count: checks.length })}</p>
      <Needed at={at} begun={begun} proof={proof} onAgain={setAgain} />
      {open && (
        <ProofCheck
          key={open.id}
          check={open}
          finding={finding}
          today={at.view.today}
          wanted={dateWantedBy(open, at.pattern, at.view.policy, at.view.today)}
          recorded={recordedFor(open, at.kit)}
          onAnswer={(answer, value) => {
            kept.change(repeat(upTo(kept.value, begun.checks, open), open, answer, value));
            setAgain(undefined);
          }}
        />
      )}
      {verdict === "not-right" && (
        <Notice tone="wrong" title={words.notProved()} isNews>
          <p>{words.notProvedMore()}</p>
        </Notice>
      )}
      <ErrorBox error={saving.error} title={words.notSaved()} />
      {verdict !== "incomplete" && !open && (
        <Button kind="primary" wide onPress={() => void save()}>
          {verdict === "right" ? words.allRight() : words.notYet()}
        </Button>
      )}
    </div>
  );
}

interface NeededProps extends Pick<ActingOnFinding, "at"> {
  readonly begun: ProofBegun;
  readonly proof: Proof;
  readonly onAgain: (check: string) => void;
}

const ANSWERS = { seen: "seen", wrong: "wrong", "not-possible": "notPossible" } as const;

/** Every check of the proof: what it said, or that it is still to do and at which line. */
function Needed({ at, begun: { checks }, proof, onAgain }: NeededProps) {
  const words = useWords("findings");
  const toDo = (step: string | undefined) => {
    const line = stepNamed(at.pattern, step ?? "")?.line;
    return line === undefined ? words.toDo() : words.toDoAt({ line });
  };
  return (
    <ul className="finding-done">
      {checks.map(({ check, step }) => {
        const answer = proof[check.id]?.answer;
        return (
          <li key={check.id}>
            {check.ask} <strong>{answer === undefined ? toDo(step) : words[ANSWERS[answer]]()}</strong>{" "}
            {answer !== undefined && (
              <Button kind="quiet" onPress={() => onAgain(check.id)} label={words.againOf({ check: check.ask })}>
                {words.again()}
              </Button>
            )}
          </li>
        );
      })}
    </ul>
  );
}
