import { PIN_ITERATIONS } from "#store/browser";
import { useState } from "react";
import { FIRST_IDLE, useDeviceState, useThisDevice } from "#web/device/index.ts";
import type { SignInOutcome } from "#web/device/device-state.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, Notice, Section, TextField, useDoing } from "#web/parts/index.ts";
import { EntryRefused } from "#web/way-in/entry-refused.tsx";
import { LockIdle } from "./lock-idle.tsx";
import { LockPasskey } from "./lock-passkey.tsx";
import "#web/way-in/lock.css";

/** The switch that locks what this device keeps, with what it costs and what it does not do. */
export function LockSettings() {
  const state = useDeviceState();
  const words = useWords("settingsLock");
  if (state.kind !== "signed-in") return null;
  const { lock, lockProgress } = state;
  return (
    <Section title={words.title()}>
      {lockProgress === undefined ? lock === "open" ? <Locked /> : <Unlocked /> : <Changing {...lockProgress} />}
    </Section>
  );
}

/** Until the last row is written anew, neither on nor off would be true. */
function Changing({ done, all }: { readonly done: number; readonly all: number }) {
  const words = useWords("settingsLock");
  return (
    <Notice title={words.changing({ done, all })} isNews>
      <p>{words.changingMore()}</p>
    </Notice>
  );
}

function Unlocked() {
  const device = useThisDevice();
  const doing = useDoing();
  const words = useWords("settingsLock");
  const [pin, setPin] = useState("");
  const [outcome, setOutcome] = useState<SignInOutcome>();
  if (!isSecureContext) {
    return <p>{words.offInsecure()}</p>;
  }
  const turnOn = () =>
    doing.run(async () => {
      setOutcome(await device.turnLockOn(pin));
    });
  return (
    <>
      <p>{words.off()}</p>
      <Costs />
      <PinField value={pin} onChange={setPin} />
      {outcome !== undefined && outcome.kind !== "signed-in" && <EntryRefused outcome={outcome} />}
      <ErrorBox error={doing.error} title={words.notLocked()} />
      <div>
        <Button onPress={() => void turnOn()} isDisabled={pin === ""} isBusy={doing.isBusy}>
          {words.turnOn()}
        </Button>
      </div>
    </>
  );
}

/** Said before it is turned on, not after. */
function Costs() {
  const words = useWords("settingsLock");
  return (
    <details className="lock-costs">
      <summary>{words.costs()}</summary>
      <ul className="lock-list">
        <li>{words.costPin({ minutes: FIRST_IDLE.minutes })}</li>
        <li>{words.costForgotten()}</li>
        <li>{words.costBeside()}</li>
        <li>{words.costGuess({ rounds: PIN_ITERATIONS })}</li>
        <li>{words.costOpen()}</li>
        <li>{words.costReadable()}</li>
      </ul>
    </details>
  );
}

function Locked() {
  const device = useThisDevice();
  const doing = useDoing();
  const words = useWords("settingsLock");
  const [pin, setPin] = useState("");
  const [isWrong, setWrong] = useState(false);
  const { people } = device.lock.openers;
  const turnOff = () => doing.run(async () => setWrong(!(await device.lock.turnOff(pin))));
  return (
    <>
      <p>{words.on({ count: people })}</p>
      <div>
        <Button onPress={() => device.lock.lockNow()}>{words.lockNow()}</Button>
      </div>
      <LockIdle />
      <LockPasskey />
      <PinField value={pin} onChange={setPin} />
      {isWrong && <Notice tone="wrong" title={words.wrongPin()} isNews />}
      <ErrorBox error={doing.error} title={words.notTurnedOff()} />
      <div>
        <Button onPress={() => void turnOff()} isDisabled={pin === ""} isBusy={doing.isBusy}>
          {words.turnOff()}
        </Button>
      </div>
    </>
  );
}

function PinField({ value, onChange }: { readonly value: string; readonly onChange: (pin: string) => void }) {
  const words = useWords("settingsLock");
  return (
    <TextField
      label={words.pinToChange()}
      type="password"
      inputMode="numeric"
      isShort
      value={value}
      onChange={onChange}
      limit={64}
    />
  );
}
