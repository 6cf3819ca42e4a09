import { useState } from "react";
import { useThisDevice, type OpenOutcome } from "#web/device/index.ts";
import { Button, ButtonRow, ErrorBox, Notice, TextField, useDoing } from "#web/parts/index.ts";
import "./settings.css";

interface LockLoosenProps {
  /** What is wanted, in words that go on a button: "lock it after 1 hour". */
  readonly words: string;
  readonly onProved: () => void;
  readonly onLeave: () => void;
}

/** Before a device locks itself later or not at all: who wants that shows that they can open it. */
export function LockLoosen({ words, onProved, onLeave }: LockLoosenProps) {
  const { lock } = useThisDevice();
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
    <section className="lock-loosen" aria-label="Only who can open it may choose that">
      <TextField
        label="Your PIN, as it opens this device"
        hint="Whoever finds it open could choose this otherwise."
        type="password"
        inputMode="numeric"
        isShort
        value={pin}
        onChange={setPin}
        limit={64}
      />
      {outcome !== undefined && outcome !== "opened" && <Notice tone="wrong" title={WORDS[outcome]} isNews />}
      <ErrorBox error={doing.error} title="Not changed" />
      <ButtonRow>
        <Button isDisabled={pin === ""} isBusy={doing.isBusy} onPress={() => prove(() => lock.provePin(pin))}>
          With this PIN, {words}
        </Button>
        {lock.openers.passkeys > 0 && (
          <Button isBusy={doing.isBusy} onPress={() => prove(() => lock.provePasskey())}>
            With a passkey, {words}
          </Button>
        )}
        <Button onPress={onLeave}>Leave it as it is</Button>
      </ButtonRow>
    </section>
  );
}

const WORDS: Readonly<Record<Exclude<OpenOutcome, "opened">, string>> = {
  wrong: "This does not open this device.",
  refused: "No passkey was given.",
  cannot: "This passkey cannot open a lock. The PIN does.",
};
