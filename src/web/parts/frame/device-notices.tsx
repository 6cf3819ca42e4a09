import { useState } from "react";
import { Link, useRoute } from "wouter";
import {
  adoptNewVersion,
  hasWorkOpen,
  sayClockDifference,
  useDeviceState,
  useNewVersion,
  type Alarm,
} from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button } from "../button.tsx";
import { Notice } from "../notice.tsx";
import { OtherHistoryNotice } from "../notices/other-history-notice.tsx";
import { StationClockNotice } from "../notices/station-clock-notice.tsx";
import { EarlyNotice, FalseSnapshotNotice } from "../notices/snapshot-notices.tsx";
import { FlawNotice, PutBackNotice } from "./put-back-notice.tsx";
import { sayInstant } from "../words/say-time.ts";

/** What a person must know of this device before trusting what it shows; nothing where all is well. */
export function DeviceNotices() {
  const state = useDeviceState();
  const words = useWords("frame");
  if (state.kind !== "signed-in") return null;
  return (
    <>
      {state.station?.early && <EarlyNotice early={state.station.early} />}
      {state.alarms.map((alarm) => (
        <AlarmNotice key={alarm.kind} alarm={alarm} />
      ))}
      {state.sendState.kind === "refused" && <RefusedNotice lines={state.sendState.lines} />}
      {state.reach.kind === "signed-out" && (
        <Notice tone="wrong" title={words.signedOut()}>
          <p>
            {state.reach.message} {state.reach.remedy}
          </p>
          <p>
            <Link to="/sign-in">{words.signInAgain()}</Link>
          </p>
        </Notice>
      )}
      <NewVersion />
    </>
  );
}

function AlarmNotice({ alarm }: { readonly alarm: Alarm }) {
  const words = useWords("frame");
  if (alarm.kind === "clock") {
    return (
      <Notice tone="attention" title={sayClockDifference(alarm.aheadMs, words) ?? words.clockOff()}>
        <p>{words.clockOffMore()}</p>
      </Notice>
    );
  }
  if (alarm.kind === "station-clock") return <StationClockNotice off={alarm.off} />;
  if (alarm.kind === "other-history") return <OtherHistoryNotice doubts={alarm.doubts} />;
  if (alarm.kind === "put-back") return <PutBackNotice {...alarm} />;
  if (alarm.kind === "flaw") return <FlawNotice flaw={alarm.flaw} />;
  if (alarm.kind === "false-snapshot") return <FalseSnapshotNotice {...alarm} />;
  if (alarm.kind === "emptied") return <EmptiedNotice lastUsed={alarm.lastUsed} />;
  return null;
}

/** Shouts: whatever had not been sent is lost, and nobody else can know. */
export function EmptiedNotice({ lastUsed }: { readonly lastUsed: string }) {
  const words = useWords("notices");
  return (
    <Notice tone="wrong" title={words.emptied()} isNews>
      <p>{words.emptiedMore({ at: sayInstant(lastUsed) })}</p>
      <p>{words.emptiedDo()}</p>
    </Notice>
  );
}

/** Over plain HTTP a browser keeps lines but not the app itself: opened without a network, there is nothing to open. */
export function InsecureNotice() {
  return isSecureContext ? null : <Insecure />;
}

function Insecure() {
  const words = useWords("notices");
  return (
    <Notice tone="attention" title={words.insecure()}>
      <p>{words.insecureMore()}</p>
    </Notice>
  );
}

/** Not on the page that it leads to. */
function RefusedNotice({ lines }: { readonly lines: number }) {
  const words = useWords("frame");
  const [isThere] = useRoute("/outbox");
  if (isThere) return null;
  return (
    <Notice tone="wrong" title={words.refusedNews({ count: lines })}>
      <p>{words.refusedMore()}</p>
      <p>
        <Link to="/outbox">{words.refusedLink()}</Link>
      </p>
    </Notice>
  );
}

/** Offered on the board only, and never while a turnaround is open on this device. */
function NewVersion() {
  const isNewer = useNewVersion();
  const [isOnBoard] = useRoute("/");
  const state = useDeviceState();
  const words = useWords("frame");
  const [isBusy, setBusy] = useState(false);
  if (!isNewer || !isOnBoard || state.kind !== "signed-in" || !state.station || hasWorkOpen(state.station)) return null;
  const adopt = () => {
    setBusy(true);
    void adoptNewVersion();
  };
  return (
    <Notice title={words.newer()}>
      <p>{words.newerMore()}</p>
      <p>
        <Button onPress={adopt} isBusy={isBusy}>
          {words.newerUse()}
        </Button>
      </p>
    </Notice>
  );
}
