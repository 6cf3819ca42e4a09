import type { Words } from "#words";
import { useEffect, useState } from "react";
import { useDeviceState, useThisDevice } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonLink, ButtonRow, InsecureNotice, Notice, Section } from "#web/parts/index.ts";

/** What this device holds, and the way to carry it elsewhere. */
export function HeldHere() {
  const device = useThisDevice();
  const state = useDeviceState();
  const words = useWords("settingsStation");
  const room = useRoom();
  const isUnkept = state.kind === "signed-in" && state.alarms.some(({ kind }) => kind === "not-kept");
  return (
    <Section title={words.held()}>
      {state.kind === "signed-in" && <p>{words.knownAs({ device: state.sitting.deviceName })}</p>}
      {room !== undefined && <p>{sayRoom(room, words)}</p>}
      {isUnkept && (
        <Notice tone="attention" title={words.notKept()}>
          <p>{words.notKeptMore()}</p>
        </Notice>
      )}
      <InsecureNotice />
      <ButtonRow>
        <Button onPress={() => void device.held.save()}>{words.saveHeld()}</Button>
        <Button onPress={() => void device.witness.save(new Date().toISOString())}>{words.saveHeads()}</Button>
        <ButtonLink to="/outbox">{words.notSent()}</ButtonLink>
      </ButtonRow>
    </Section>
  );
}

interface Room {
  /** [byte] */
  readonly usage: number;
  readonly quota: number;
}

/** What the browser keeps for this app, and would; where it tells. */
function useRoom(): Room | undefined {
  const [room, setRoom] = useState<Room>();
  useEffect(() => {
    if (!("storage" in navigator)) return;
    void navigator.storage.estimate().then(readRoom).then(setRoom);
  }, []);
  return room;
}

function readRoom({ usage, quota }: StorageEstimate): Room | undefined {
  return usage === undefined || quota === undefined ? undefined : { usage, quota };
}

/** "12 MB of 2048 MB used." */
function sayRoom({ usage, quota }: Room, words: Words["settingsStation"]): string {
  const inMegabytes = (bytes: number) => words.megabytes({ count: Math.max(1, Math.round(bytes / 1e6)) });
  return words.roomUsed({ used: inMegabytes(usage), room: inMegabytes(quota) });
}
