import { useState } from "react";
import { useDeviceState, useThisDevice } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ConfirmDialog, ErrorBox, Notice, Section, useDoing } from "#web/parts/index.ts";

/** Two ways to leave: hand the device on, or remove all that is on it. */
export function LeaveDevice() {
  const words = useWords("settingsStation");
  return (
    <Section title={words.leaveDevice()}>
      <HandOver />
      <SignOut />
    </Section>
  );
}

function HandOver() {
  const device = useThisDevice();
  const doing = useDoing();
  const words = useWords("settingsStation");
  return (
    <>
      <p>{words.handOverMore()}</p>
      <div>
        <Button onPress={() => void doing.run(() => device.handOver())} isBusy={doing.isBusy}>
          {words.handOver()}
        </Button>
      </div>
      <ErrorBox error={doing.error} title={words.notSignedOut()} />
    </>
  );
}

function SignOut() {
  const device = useThisDevice();
  const doing = useDoing();
  const words = useWords("settingsStation");
  const [isAsking, setAsking] = useState(false);
  return (
    <>
      <p>{words.eraseMore()}</p>
      <div>
        <Button tone="grave" onPress={() => setAsking(true)} isBusy={doing.isBusy}>
          {words.erase()}
        </Button>
      </div>
      <ErrorBox error={doing.error} title={words.notRemoved()} />
      <ConfirmDialog
        title={words.eraseAsk()}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void doing.run(() => device.signOutAndErase())}
        confirm={words.eraseDo()}
        tone="grave"
        isBusy={doing.isBusy}
      >
        <Unsent />
      </ConfirmDialog>
    </>
  );
}

/** Warns of what would be lost: everybody's unsent lines on this device, not only one's own. */
function Unsent() {
  const state = useDeviceState();
  const device = useThisDevice();
  const words = useWords("settingsStation");
  if (state.kind !== "signed-in") return null;
  const lines = state.outbox.length + state.lost.length + state.handed.length;
  const photos = state.sendState.kind === "waiting" ? state.sendState.photos : 0;
  if (lines === 0 && photos === 0) return <p>{words.nothingLost()}</p>;
  return (
    <Notice tone="wrong" title={words.wouldBeLost({ lines, photos })}>
      <p>{words.sendFirst()}</p>
      <div>
        <Button onPress={() => void device.held.save()}>{words.saveHeld()}</Button>
      </div>
    </Notice>
  );
}
