import { useState } from "react";
import { useLocation } from "wouter";
import { sealingRefusals } from "#readiness";
import { Button, ErrorBox, Notice, TextField } from "#web/parts/index.ts";
import type { KitActs } from "#web/act/acts.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { judgeTyping } from "#web/act/seal-reading.ts";
import { secondsNamed } from "../second/use-seconds.ts";
import { useSaving } from "#web/act/use-saving.ts";

/** The new seal's number, read and typed twice; refused where it was ever used. Then the kit is closed. */
export function SealForm({ open, acts }: { readonly open: OpenKit; readonly acts: KitActs }) {
  const { kit, turnaround, pattern, view } = open;
  const saving = useSaving(secondsNamed(turnaround));
  const [, navigate] = useLocation();
  const [first, setFirst] = useState("");
  const [second, setSecond] = useState("");
  const [witness, setWitness] = useState("");
  const [tried, setTried] = useState(false);
  const seal = first.trim();
  const used = sealingRefusals({ kit, turnaround, pattern, allKits: view.kits, seal });
  const typing = judgeTyping(first, second);
  const close = async () => {
    setTried(true);
    if (typing !== undefined || used.length > 0) return;
    const body = { turnaround: turnaround.id, seal, ...(witness.trim() !== "" && { witness: witness.trim() }) };
    const done = await saving.save(() => acts.seal(body));
    if (done) navigate(`/kit/${kit.id}/turnaround/${turnaround.id}/record?closed`);
  };
  return (
    <>
      <TextField label="New seal number" hint="Read it off the new seal." value={first} onChange={setFirst} isShort />
      {seal !== "" && used.length > 0 && <UsedSeal texts={used.map((reason) => reason.text)} />}
      <TextField
        label="Seal number again"
        hint="After fitting, read it off the closed container."
        value={second}
        onChange={setSecond}
        isShort
        {...(tried && typing !== undefined && { fault: typing })}
      />
      <TextField label="Who else saw it closed, if anybody" value={witness} onChange={setWitness} />
      <ErrorBox error={saving.error} title="Not sealed" />
      <Button kind="primary" wide onPress={() => void close()}>
        {seal === "" ? "Sealed" : `Sealed with ${seal}`}
      </Button>
    </>
  );
}

function UsedSeal({ texts }: { readonly texts: readonly string[] }) {
  return (
    <Notice tone="wrong" title="This seal is refused" isNews>
      {texts.map((text) => (
        <p key={text}>{text}</p>
      ))}
      <p>Use another seal, and find out how this number came to be here.</p>
    </Notice>
  );
}
