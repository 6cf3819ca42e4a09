import { useState } from "react";
import { useLocation } from "wouter";
import { type Refusal, sayRefusal } from "#readiness";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, TextField } from "#web/parts/index.ts";
import type { KitActs } from "#web/act/acts.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { useSaving } from "#web/act/use-saving.ts";

interface GroundedFormProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly refusals: readonly Refusal[];
  readonly onLeave: () => void;
}

/** Closes a kit that may not go: why, in words, and the seal put on it, if one was. */
export function GroundedForm({ open, acts, refusals, onLeave }: GroundedFormProps) {
  const { kit, turnaround } = open;
  const saving = useSaving();
  const words = useWords("turnaroundEnd");
  const held = useWords("held");
  const [, navigate] = useLocation();
  const [reason, setReason] = useState(() => sayFinding(refusals, held));
  const [seal, setSeal] = useState("");
  const [missing, setMissing] = useState(false);
  const close = async () => {
    setMissing(reason.trim() === "");
    if (reason.trim() === "") return;
    const body = { turnaround: turnaround.id, reason: reason.trim(), ...(seal.trim() !== "" && { seal: seal.trim() }) };
    const done = await saving.save(() => acts.closeGrounded(body));
    if (done) navigate(`/kit/${kit.id}/turnaround/${turnaround.id}/record?closed`);
  };
  return (
    <>
      <TextField
        label={words.whyGrounded()}
        value={reason}
        onChange={setReason}
        isLong
        {...(missing && { fault: words.sayWhy() })}
      />
      <TextField label={words.sealIfAny()} value={seal} onChange={setSeal} isShort />
      <ErrorBox error={saving.error} title={words.notClosed()} />
      <div className="sheet-ways">
        <Button kind="primary" tone="grave" wide onPress={() => void close()}>
          {words.closeAsGrounded()}
        </Button>
        <Button wide onPress={onLeave}>
          {words.goBack()}
        </Button>
      </div>
    </>
  );
}

/** The finding that grounds it, to begin with. */
function sayFinding(refusals: readonly Refusal[], words: Words["held"]): string {
  const finding = refusals.find((one) => one.rule === "finding");
  return finding === undefined ? "" : sayRefusal(finding, words);
}
