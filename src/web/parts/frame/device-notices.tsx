import { useState } from "react";
import { Link, useRoute } from "wouter";
import {
  adoptNewVersion,
  hasWorkOpen,
  sayClockDifference,
  useDeviceState,
  useNewVersion,
  type Alarm,
} from "../../device/index.ts";
import { Button } from "../button.tsx";
import { Notice } from "../notice.tsx";
import { OtherHistoryNotice } from "../notices/other-history-notice.tsx";
import { StationClockNotice } from "../notices/station-clock-notice.tsx";
import { EarlyNotice, FalseSnapshotNotice } from "../notices/snapshot-notices.tsx";
import { FlawNotice, PutBackNotice } from "./put-back-notice.tsx";
import { sayCount } from "../words/say-count.ts";
import { sayInstant } from "../words/say-time.ts";

/** What a person must know of this device before trusting what it shows; nothing where all is well. */
export function DeviceNotices() {
  const state = useDeviceState();
  if (state.kind !== "signed-in") return null;
  return (
    <>
      {state.station?.early && <EarlyNotice early={state.station.early} />}
      {state.alarms.map((alarm) => (
        <AlarmNotice key={alarm.kind} alarm={alarm} />
      ))}
      {state.sendState.kind === "refused" && <RefusedNotice lines={state.sendState.lines} />}
      {state.reach.kind === "signed-out" && (
        <Notice tone="wrong" title="This device is signed out. What you write stays here and is not sent.">
          <p>
            {state.reach.message} {state.reach.remedy}
          </p>
          <p>
            <Link to="/sign-in">Sign in again</Link>
          </p>
        </Notice>
      )}
      <NewVersion />
    </>
  );
}

function AlarmNotice({ alarm }: { readonly alarm: Alarm }) {
  if (alarm.kind === "clock") {
    return (
      <Notice tone="attention" title={sayClockDifference(alarm.aheadMs) ?? "This device's clock is off."}>
        <p>Set its date, time and time zone to automatic. Lines dated ahead of the station's clock are refused.</p>
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
  return (
    <Notice tone="wrong" title="This device's memory was emptied" isNews>
      <p>
        It was in use until {sayInstant(lastUsed)}. The browser, or somebody, has since removed what was kept. Lines
        that had been sent come back from the station. Lines that had not been sent are lost: look what is missing and
        write it again.
      </p>
      <p>Put this app on the home screen, and do not clear the browser's data.</p>
    </Notice>
  );
}

/** Over plain HTTP a browser keeps lines but not the app itself: opened without a network, there is nothing to open. */
export function InsecureNotice() {
  if (isSecureContext) return null;
  return (
    <Notice tone="attention" title="At this address the app cannot be kept on the device">
      <p>
        It is not encrypted, so the browser opens it only while the station can be reached. Ask whoever looks after the
        server for an address that begins with https. What you write is kept here all the same.
      </p>
    </Notice>
  );
}

/** Not on the page that it leads to. */
function RefusedNotice({ lines }: { readonly lines: number }) {
  const [isThere] = useRoute("/outbox");
  if (isThere) return null;
  return (
    <Notice tone="wrong" title={`The station refused ${sayCount(lines, "line")} from this device`}>
      <p>What was written is seen on this device only.</p>
      <p>
        <Link to="/outbox">See why, and what to do</Link>
      </p>
    </Notice>
  );
}

/** Offered on the board only, and never while a turnaround is open on this device. */
function NewVersion() {
  const isNewer = useNewVersion();
  const [isOnBoard] = useRoute("/");
  const state = useDeviceState();
  const [isBusy, setBusy] = useState(false);
  if (!isNewer || !isOnBoard || state.kind !== "signed-in" || !state.station || hasWorkOpen(state.station)) return null;
  const adopt = () => {
    setBusy(true);
    void adoptNewVersion();
  };
  return (
    <Notice title="A newer version of the app is on this device">
      <p>It takes over when you say so. What you wrote stays as it is.</p>
      <p>
        <Button onPress={adopt} isBusy={isBusy}>
          Use the newer version
        </Button>
      </p>
    </Notice>
  );
}
