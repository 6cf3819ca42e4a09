import type { Words } from "#words";
import { useState } from "react";
import { useThisDevice, type OpenOutcome } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonRow, ErrorBox, Notice, TextField, useDoing } from "#web/parts/index.ts";
import "./settings.css";

/** What is wanted of the lock, as its buttons say it. */
export interface Wanted {
  readonly wanted: "stay" | "never" | "after";
  /** After which it locks. */
  readonly time: string;
}

interface LockLoosenProps {
  readonly wanted: Wanted;
  readonly onProved: () => void;
  readonly onLeave: () => void;
}

/** Before a device locks itself later or not at all: who wants that shows that they can open it. */
export function LockLoosen({ wanted, onProved, onLeave }: LockLoosenProps) {
  const { lock } = useThisDevice();
  const words = useWords("settingsLock");
  const doing = useDoing();
  const [pin, setPin] = useState("");
  const [outcome, setOutcome] = useState<OpenOutcome>();
  const prove = (way: () => Promise<OpenOutcome>) =>
    void doing.run(async () => {
      const ended = await way();
      setOutcome(ended);
      if (ended === "opened") onProved();
    });
  return (
    <section className="lock-loosen" aria-label={words.onlyWhoOpens()}>
      <TextField
        label={words.pinThatOpens()}
        hint={words.pinThatOpensHint()}
        type="password"
        inputMode="numeric"
        isShort
        value={pin}
        onChange={setPin}
        limit={64}
      />
      {outcome !== undefined && outcome !== "opened" && (
        <Notice tone="wrong" title={sayOutcome(outcome, words)} isNews />
      )}
      <ErrorBox error={doing.error} title={words.notChanged()} />
      <ButtonRow>
        <Button isDisabled={pin === ""} isBusy={doing.isBusy} onPress={() => prove(() => lock.provePin(pin))}>
          {words.withPin({ ...wanted })}
        </Button>
        {lock.openers.passkeys > 0 && (
          <Button isBusy={doing.isBusy} onPress={() => prove(() => lock.provePasskey())}>
            {words.withPasskey({ ...wanted })}
          </Button>
        )}
        <Button onPress={onLeave}>{words.leaveIt()}</Button>
      </ButtonRow>
    </section>
  );
}

function sayOutcome(outcome: Exclude<OpenOutcome, "opened">, words: Words["settingsLock"]): string {
  const said = { wrong: words.notOpened, refused: words.noPasskeyGiven, cannot: words.passkeyCannot };
  return said[outcome]();
}
