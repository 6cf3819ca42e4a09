import { useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import { Button, ErrorBox, Notice, useDoing } from "#web/parts/index.ts";
import { hasPasskeys } from "#web/way-in/has-passkeys.ts";

type Outcome = Awaited<ReturnType<ReturnType<typeof useThisDevice>["lock"]["addPasskey"]>>;

const WORDS: Readonly<Record<Outcome, string>> = {
  added: "The passkey opens this device.",
  refused: "No passkey was given.",
  cannot: "This passkey cannot open a lock: it, or this browser, derives no secrets (PRF). The PIN does.",
  none: "You have no passkey at this station, or it cannot be asked just now. Add one under Signing in.",
};

/** Lets a passkey open the lock, where it can derive secrets. */
export function LockPasskey() {
  const { lock } = useThisDevice();
  const doing = useDoing();
  const [outcome, setOutcome] = useState<Outcome>();
  if (!hasPasskeys()) return null;
  const { passkeys } = lock.openers;
  return (
    <>
      <p>
        {passkeys === 0 ? "No passkey opens it." : `Passkeys that open it: ${passkeys}.`} A passkey cannot be guessed;
        the PIN beside it still can.
      </p>
      <div>
        <Button onPress={() => void doing.run(async () => setOutcome(await lock.addPasskey()))} isBusy={doing.isBusy}>
          Let my passkey open it
        </Button>
      </div>
      {outcome !== undefined && (
        <Notice title={WORDS[outcome]} tone={outcome === "added" ? "plain" : "attention"} isNews />
      )}
      <ErrorBox error={doing.error} title="Not added" />
    </>
  );
}
