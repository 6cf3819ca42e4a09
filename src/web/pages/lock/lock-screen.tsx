import { useState, type FormEvent } from "react";
import { goBeside, useThisDevice, type DeviceState, type OpenOutcome } from "../../device/index.ts";
import { Button, ConfirmDialog, ErrorBox, Notice, Page, Section, useDoing } from "../../parts/index.ts";
import { PinPad } from "../../way-in/pin-pad.tsx";
import { SealedNext } from "./sealed-call.tsx";
import "../../way-in/sign-in.css";
import "../../way-in/lock.css";

type Locked = DeviceState & { readonly kind: "locked" };

/** A locked device: who may read it opens it here, and a boat that takes water does not wait for that. */
export function LockPage({ state }: { readonly state: Locked }) {
  return (
    <Page title="This device is locked" frame="full">
      <div className="lock">
        <Button kind="primary" wide onPress={goBeside}>
          Boat taking water
        </Button>
        <Opening hasPasskey={state.hasPasskey} />
        <div className="lock-beside">
          <SealedNext />
          <Unopened state={state} />
          <Forgotten />
        </div>
      </div>
    </Page>
  );
}

function Opening({ hasPasskey }: Pick<Locked, "hasPasskey">) {
  const { lock } = useThisDevice();
  const doing = useDoing();
  const [pin, setPin] = useState("");
  const [outcome, setOutcome] = useState<OpenOutcome>();
  const open = (way: () => Promise<OpenOutcome>) => {
    setOutcome(undefined);
    void doing.run(async () => {
      const ended = await way();
      setOutcome(ended);
      if (ended !== "opened") setPin("");
    });
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (pin !== "") open(() => lock.openWithPin(pin));
  };
  return (
    <form className="sign-in-form" onSubmit={submit}>
      <PinPad
        label="Your PIN"
        hint="Of anybody who has locked or signed in on this device. No network is needed."
        value={pin}
        onChange={setPin}
      />
      <NotOpened outcome={outcome} />
      <ErrorBox error={doing.error} title="Not opened" />
      <Button kind="primary" type="submit" isDisabled={pin === ""} isBusy={doing.isBusy}>
        Open this device
      </Button>
      {hasPasskey && (
        <Button onPress={() => open(() => lock.openWithPasskey())} isBusy={doing.isBusy}>
          Open with a passkey
        </Button>
      )}
    </form>
  );
}

function NotOpened({ outcome }: { readonly outcome: OpenOutcome | undefined }) {
  if (outcome === undefined || outcome === "opened") return null;
  if (outcome === "wrong") {
    return (
      <Notice tone="wrong" title="This PIN does not open this device" isNews>
        <p>
          Nothing is lost, and you may try as often as you like. A PIN changed on another device is the old one here.
        </p>
      </Notice>
    );
  }
  return (
    <Notice tone="wrong" title="The passkey did not open this device" isNews>
      <p>Try again, or enter a PIN.</p>
    </Notice>
  );
}

function Unopened({ state }: { readonly state: Locked }) {
  return (
    <Section title="While it is locked">
      {state.hasBeside && (
        <p>A sheet was begun here. It goes on where it was left, and is taken in once this is opened.</p>
      )}
      <ul className="lock-list">
        <li>A fresh casualty sheet and the card for strangers work, without the station's kits and boats.</li>
        <li>A refuelling reminder that was set on this device still calls.</li>
        <li>
          What was due on an open sheet, and waits of a turnaround, still call; what they are about shows once it is
          opened.
        </li>
        <li>Sending and fetching stand still until it is opened.</li>
      </ul>
    </Section>
  );
}

function Forgotten() {
  const { lock } = useThisDevice();
  const doing = useDoing();
  const [isAsking, setAsking] = useState(false);
  return (
    <Section title="Nobody can open it">
      <p>
        Anybody's PIN that opened it before still does. If none is left, remove what is locked, have an administrator
        invite you, and sign in anew: the station's log comes back.
      </p>
      <div>
        <Button tone="grave" onPress={() => setAsking(true)} isBusy={doing.isBusy}>
          Remove what is locked
        </Button>
      </div>
      <ErrorBox error={doing.error} title="Not removed" />
      <ConfirmDialog
        title="Remove everything that is locked?"
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void doing.run(() => lock.startAnew())}
        confirm="Remove it"
        tone="grave"
        isBusy={doing.isBusy}
      >
        <p>Lines and photos on this device that were not sent are lost. Nobody can say how many those are.</p>
        <p>What was sent is with the station. A sheet written without opening stays.</p>
      </ConfirmDialog>
    </Section>
  );
}
