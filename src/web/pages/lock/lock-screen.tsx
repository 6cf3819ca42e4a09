import { useState, type FormEvent } from "react";
import { goBeside, useThisDevice, type DeviceState, type OpenOutcome } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ConfirmDialog, ErrorBox, Notice, Page, Section, useDoing } from "#web/parts/index.ts";
import { PinPad } from "#web/way-in/pin-pad.tsx";
import { SealedNext } from "./sealed-call.tsx";
import "#web/way-in/sign-in.css";
import "#web/way-in/lock.css";

type Locked = DeviceState & { readonly kind: "locked" };

/** A locked device: who may read it opens it here, and a boat that takes water does not wait for that. */
export function LockPage({ state }: { readonly state: Locked }) {
  const words = useWords("lock");
  return (
    <Page title={words.title()} frame="full">
      <div className="lock">
        <Button kind="primary" wide onPress={goBeside}>
          {words.takingWater()}
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
  const words = useWords("lock");
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
      <PinPad label={words.yourPin()} hint={words.yourPinHint()} value={pin} onChange={setPin} />
      <NotOpened outcome={outcome} />
      <ErrorBox error={doing.error} title={words.notOpened()} />
      <Button kind="primary" type="submit" isDisabled={pin === ""} isBusy={doing.isBusy}>
        {words.open()}
      </Button>
      {hasPasskey && (
        <Button onPress={() => open(() => lock.openWithPasskey())} isBusy={doing.isBusy}>
          {words.openPasskey()}
        </Button>
      )}
    </form>
  );
}

function NotOpened({ outcome }: { readonly outcome: OpenOutcome | undefined }) {
  const words = useWords("lock");
  if (outcome === undefined || outcome === "opened") return null;
  if (outcome === "wrong") {
    return (
      <Notice tone="wrong" title={words.wrongPin()} isNews>
        <p>{words.wrongPinMore()}</p>
      </Notice>
    );
  }
  return (
    <Notice tone="wrong" title={words.wrongPasskey()} isNews>
      <p>{words.wrongPasskeyMore()}</p>
    </Notice>
  );
}

function Unopened({ state }: { readonly state: Locked }) {
  const words = useWords("lock");
  return (
    <Section title={words.whileLocked()}>
      {state.hasBeside && <p>{words.sheetBegun()}</p>}
      <ul className="lock-list">
        <li>{words.worksBeside()}</li>
        <li>{words.refuelCalls()}</li>
        <li>{words.dueCalls()}</li>
        <li>{words.sendingStands()}</li>
      </ul>
    </Section>
  );
}

function Forgotten() {
  const { lock } = useThisDevice();
  const words = useWords("lock");
  const doing = useDoing();
  const [isAsking, setAsking] = useState(false);
  return (
    <Section title={words.nobody()}>
      <p>{words.nobodyMore()}</p>
      <div>
        <Button tone="grave" onPress={() => setAsking(true)} isBusy={doing.isBusy}>
          {words.remove()}
        </Button>
      </div>
      <ErrorBox error={doing.error} title={words.notRemoved()} />
      <ConfirmDialog
        title={words.removeAsk()}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void doing.run(() => lock.startAnew())}
        confirm={words.removeDo()}
        tone="grave"
        isBusy={doing.isBusy}
      >
        <p>{words.removeLoses()}</p>
        <p>{words.removeKeeps()}</p>
      </ConfirmDialog>
    </Section>
  );
}
