import { useState } from "react";
import { useLocation } from "wouter";
import { sealingRefusals, sayRefusal } from "#readiness";
import { useWords } from "#web/language/index.ts";
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
  const words = useWords("turnaroundEnd");
  const held = useWords("held");
  const [, navigate] = useLocation();
  const [first, setFirst] = useState("");
  const [second, setSecond] = useState("");
  const [witness, setWitness] = useState("");
  const [tried, setTried] = useState(false);
  const seal = first.trim();
  const used = sealingRefusals({ kit, turnaround, pattern, allKits: view.kits, seal });
  const typing = judgeTyping(first, second, useWords("act"));
  const close = async () => {
    setTried(true);
    if (typing !== undefined || used.length > 0) return;
    const body = { turnaround: turnaround.id, seal, ...(witness.trim() !== "" && { witness: witness.trim() }) };
    const done = await saving.save(() => acts.seal(body));
    if (done) navigate(`/kit/${kit.id}/turnaround/${turnaround.id}/record?closed`);
  };
  return (
    <>
      <TextField label={words.sealNumber()} hint={words.sealNumberHint()} value={first} onChange={setFirst} isShort />
      {seal !== "" && used.length > 0 && <UsedSeal texts={used.map((reason) => sayRefusal(reason, held))} />}
      <TextField
        label={words.sealAgain()}
        hint={words.sealAgainHint()}
        value={second}
        onChange={setSecond}
        isShort
        {...(tried && typing !== undefined && { fault: typing })}
      />
      <TextField label={words.witness()} value={witness} onChange={setWitness} />
      <ErrorBox error={saving.error} title={words.notSealed()} />
      <Button kind="primary" wide onPress={() => void close()}>
        {seal === "" ? words.sealed() : words.sealedWith({ seal })}
      </Button>
    </>
  );
}

function UsedSeal({ texts }: { readonly texts: readonly string[] }) {
  const words = useWords("turnaroundEnd");
  return (
    <Notice tone="wrong" title={words.sealRefused()} isNews>
      {texts.map((text) => (
        <p key={text}>{text}</p>
      ))}
      <p>{words.sealRefusedMore()}</p>
    </Notice>
  );
}
