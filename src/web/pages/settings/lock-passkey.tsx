import type { Words } from "#words";
import { useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, Notice, useDoing } from "#web/parts/index.ts";
import { hasPasskeys } from "#web/way-in/has-passkeys.ts";

type Outcome = Awaited<ReturnType<ReturnType<typeof useThisDevice>["lock"]["addPasskey"]>>;

/** Lets a passkey open the lock, where it can derive secrets. */
export function LockPasskey() {
  const { lock } = useThisDevice();
  const doing = useDoing();
  const words = useWords("settingsLock");
  const [outcome, setOutcome] = useState<Outcome>();
  if (!hasPasskeys()) return null;
  const { passkeys } = lock.openers;
  return (
    <>
      <p>{words.passkeysThatOpen({ count: passkeys })}</p>
      <div>
        <Button onPress={() => void doing.run(async () => setOutcome(await lock.addPasskey()))} isBusy={doing.isBusy}>
          {words.letPasskey()}
        </Button>
      </div>
      {outcome !== undefined && (
        <Notice title={sayOutcome(outcome, words)} tone={outcome === "added" ? "plain" : "attention"} isNews />
      )}
      <ErrorBox error={doing.error} title={words.notAdded()} />
    </>
  );
}

function sayOutcome(outcome: Outcome, words: Words["settingsLock"]): string {
  const said = {
    added: words.passkeyOpens,
    refused: words.noPasskeyGiven,
    cannot: words.passkeyCannotPrf,
    none: words.noPasskey,
  };
  return said[outcome]();
}
