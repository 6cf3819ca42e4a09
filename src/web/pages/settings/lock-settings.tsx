import { PIN_ITERATIONS } from "#store/browser";
import { useState } from "react";
import { FIRST_IDLE, useDeviceState, useThisDevice } from "#web/device/index.ts";
import type { SignInOutcome } from "#web/device/device-state.ts";
import { Button, ErrorBox, Notice, Section, TextField, useDoing } from "#web/parts/index.ts";
import { EntryRefused } from "#web/way-in/entry-refused.tsx";
import { LockIdle } from "./lock-idle.tsx";
import { LockPasskey } from "./lock-passkey.tsx";
import "#web/way-in/lock.css";

/** The switch that locks what this device keeps, with what it costs and what it does not do. */
export function LockSettings() {
  const state = useDeviceState();
  if (state.kind !== "signed-in") return null;
  const { lock, lockProgress } = state;
  return (
    <Section title="Lock on this device">
      {lockProgress === undefined ? lock === "open" ? <Locked /> : <Unlocked /> : <Changing {...lockProgress} />}
    </Section>
  );
}

/** Until the last row is written anew, neither on nor off would be true. */
function Changing({ done, all }: { readonly done: number; readonly all: number }) {
  return (
    <Notice title={`Changing the lock: ${done} of ${all} written anew`} isNews>
      <p>You may go on meanwhile. If it is interrupted it goes on when somebody opens this device.</p>
    </Notice>
  );
}

function Unlocked() {
  const device = useThisDevice();
  const doing = useDoing();
  const [pin, setPin] = useState("");
  const [outcome, setOutcome] = useState<SignInOutcome>();
  if (!isSecureContext) {
    return <p>Off. It needs an address that begins with https: only there can a browser encrypt.</p>;
  }
  const turnOn = () =>
    doing.run(async () => {
      setOutcome(await device.turnLockOn(pin));
    });
  return (
    <>
      <p>Off. Whoever can open this device reads everything kept here. Locked, it is encrypted until a PIN opens it.</p>
      <Costs />
      <PinField value={pin} onChange={setPin} />
      {outcome !== undefined && outcome.kind !== "signed-in" && <EntryRefused outcome={outcome} />}
      <ErrorBox error={doing.error} title="Not locked" />
      <div>
        <Button onPress={() => void turnOn()} isDisabled={pin === ""} isBusy={doing.isBusy}>
          Lock this device by PIN
        </Button>
      </div>
    </>
  );
}

/** Said before it is turned on, not after. */
function Costs() {
  return (
    <details className="lock-costs">
      <summary>What it costs, and what it does not do</summary>
      <ul className="lock-list">
        <li>
          Nothing can be read or sent before a PIN is entered: at each start, after each reload of the page, and when
          nobody has touched it for {FIRST_IDLE.minutes} minutes. That time can be chosen once it is on.
        </li>
        <li>Where nobody knows a PIN that opens it any more, lines and photos that were not sent are lost.</li>
        <li>
          A fresh casualty sheet can always be written without opening. What was due on an open sheet or in a turnaround
          still calls, and says what it is once this is opened.
        </li>
        <li>
          A short PIN can be guessed by who has a copy of this device's memory. Each guess costs{" "}
          {PIN_ITERATIONS.toLocaleString("en")} rounds of SHA-256; at 15,000 guesses a second, as one fast graphics card
          makes them, all PINs of 6 figures take about a minute, of 8 about two hours, of 10 eight days, of 12 two
          years.
        </li>
        <li>It does nothing while this device is open, nor against somebody who watches the PIN being entered.</li>
        <li>
          Ids, numbers and times of lines, the kits' patterns, this device's name, when an alarm is due, refuelling
          reminders and what is told before a launch stay readable. What was written before may be found in the
          browser's files for a while.
        </li>
      </ul>
    </details>
  );
}

function Locked() {
  const device = useThisDevice();
  const doing = useDoing();
  const [pin, setPin] = useState("");
  const [isWrong, setWrong] = useState(false);
  const { people } = device.lock.openers;
  const turnOff = () => doing.run(async () => setWrong(!(await device.lock.turnOff(pin))));
  return (
    <>
      <p>
        On. What is kept here is encrypted;{" "}
        {people === 1 ? "one person's PIN opens" : `the PINs of ${people} people open`} it. Whoever signs in here with a
        PIN can open it from then on.
      </p>
      <div>
        <Button onPress={() => device.lock.lockNow()}>Lock now</Button>
      </div>
      <LockIdle />
      <LockPasskey />
      <PinField value={pin} onChange={setPin} />
      {isWrong && <Notice tone="wrong" title="This PIN does not open this device." isNews />}
      <ErrorBox error={doing.error} title="Not turned off" />
      <div>
        <Button onPress={() => void turnOff()} isDisabled={pin === ""} isBusy={doing.isBusy}>
          Turn the lock off
        </Button>
      </div>
    </>
  );
}

function PinField({ value, onChange }: { readonly value: string; readonly onChange: (pin: string) => void }) {
  return (
    <TextField
      label="Your PIN, to change the lock"
      type="password"
      inputMode="numeric"
      isShort
      value={value}
      onChange={onChange}
      limit={64}
    />
  );
}
