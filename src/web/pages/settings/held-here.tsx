import { useEffect, useState } from "react";
import { useDeviceState, useThisDevice } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, InsecureNotice, Notice, Section } from "#web/parts/index.ts";

/** What this device holds, and the way to carry it elsewhere. */
export function HeldHere() {
  const device = useThisDevice();
  const state = useDeviceState();
  const room = useRoom();
  const isUnkept = state.kind === "signed-in" && state.alarms.some(({ kind }) => kind === "not-kept");
  return (
    <Section title="Held on this device">
      {state.kind === "signed-in" && <p>Known here as {state.sitting.deviceName}.</p>}
      {room !== undefined && <p>{room}</p>}
      {isUnkept && (
        <Notice tone="attention" title="The browser has not promised to keep what is here">
          <p>Put this app on the home screen and open it from there. Until then send often.</p>
        </Notice>
      )}
      <InsecureNotice />
      <ButtonRow>
        <Button onPress={() => void device.held.save()}>Save everything held here to a file</Button>
        <Button onPress={() => void device.witness.save(new Date().toISOString())}>
          Save the signed heads kept here to a file
        </Button>
        <ButtonLink to="/outbox">What is not yet sent</ButtonLink>
      </ButtonRow>
    </Section>
  );
}

/** "12 MB of 2 048 MB used", where the browser tells. */
function useRoom(): string | undefined {
  const [room, setRoom] = useState<string>();
  useEffect(() => {
    if (!("storage" in navigator)) return;
    void navigator.storage.estimate().then(sayRoom).then(setRoom);
  }, []);
  return room;
}

function sayRoom({ usage, quota }: StorageEstimate): string | undefined {
  return usage === undefined || quota === undefined
    ? undefined
    : `${inMegabytes(usage)} of ${inMegabytes(quota)} used.`;
}

function inMegabytes(bytes: number): string {
  return `${Math.max(1, Math.round(bytes / 1e6))} MB`;
}
