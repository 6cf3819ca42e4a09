import { useState } from "react";
import { useDeviceState, useThisDevice } from "#web/device/index.ts";
import { Button, ConfirmDialog, ErrorBox, Notice, sayCount, Section, useDoing } from "#web/parts/index.ts";

/** Two ways to leave: hand the device on, or remove all that is on it. */
export function LeaveDevice() {
  return (
    <Section title="Leave this device">
      <HandOver />
      <SignOut />
    </Section>
  );
}

function HandOver() {
  const device = useThisDevice();
  const doing = useDoing();
  return (
    <>
      <p>Somebody else will use it: what is held here stays, your unsent lines wait for you.</p>
      <div>
        <Button onPress={() => void doing.run(() => device.handOver())} isBusy={doing.isBusy}>
          Sign out, leave what is here
        </Button>
      </div>
      <ErrorBox error={doing.error} title="Not signed out" />
    </>
  );
}

function SignOut() {
  const device = useThisDevice();
  const doing = useDoing();
  const [isAsking, setAsking] = useState(false);
  return (
    <>
      <p>It leaves the station, or was only borrowed: nothing of the station's stays on it.</p>
      <div>
        <Button tone="grave" onPress={() => setAsking(true)} isBusy={doing.isBusy}>
          Sign out and remove everything
        </Button>
      </div>
      <ErrorBox error={doing.error} title="Not removed" />
      <ConfirmDialog
        title="Remove everything from this device?"
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void doing.run(() => device.signOutAndErase())}
        confirm="Sign out and remove"
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
  if (state.kind !== "signed-in") return null;
  const lines = state.outbox.length + state.lost.length + state.handed.length;
  const photos = state.sendState.kind === "waiting" ? state.sendState.photos : 0;
  if (lines === 0 && photos === 0) return <p>Everything written here is with the station. Nothing is lost.</p>;
  return (
    <Notice
      tone="wrong"
      title={`${sayCount(lines, "line")} and ${sayCount(photos, "photo")} on this device are not with the station, and would be lost.`}
    >
      <p>Find a network and send them first, or save them to a file.</p>
      <div>
        <Button onPress={() => void device.held.save()}>Save everything held here to a file</Button>
      </div>
    </Notice>
  );
}
