import { useEffect, useState } from "react";
import { instantsOf, sealedCalls, useDeviceState } from "../../device/index.ts";
import { Button, GloveRow, Notice, sayElapsed, Timestamp } from "../../parts/index.ts";
import { alarm, AlarmCall, useArming, useNow } from "../../timing/index.ts";
import { useWatched } from "../../watched/index.ts";

/** Somebody went to open the device: it calls again after so long if nobody has [ms]. */
const PUT_OFF_MS = 60_000;

/** Calls on a locked device when something is due, and says nothing of what it is. */
export function SealedCall() {
  const instants = instantsOf(useWatched(sealedCalls));
  const isSet = instants.length > 0;
  const now = useNow(isSet);
  const [putOff, setPutOff] = useState(0);
  useArming();
  // Where the browser remembers the tap before the reload, it lets sound out without another.
  useEffect(() => (isSet ? alarm.arm() : undefined), [isSet]);
  const due = instants.find((at) => at <= now);
  if (due === undefined || Math.abs(now - putOff) < PUT_OFF_MS) return null;
  return <Call due={due} now={now} onUnlock={() => setPutOff(now)} />;
}

interface CallProps {
  /** [ms] */
  readonly due: number;
  /** [ms] */
  readonly now: number;
  readonly onUnlock: () => void;
}

function Call({ due, now, onUnlock }: CallProps) {
  const isBeside = useDeviceState().kind === "signed-in";
  const over = now - due < 60_000 ? "now" : `${sayElapsed((now - due) / 1000)} over`;
  return (
    <AlarmCall caller="This device is locked" title="Something is due: unlock to see" face={over}>
      <p>What it is stands behind the lock. It calls again in a minute, until this device is opened.</p>
      <GloveRow>
        <Button kind="primary" wide onPress={onUnlock}>
          {isBeside ? "In a minute" : "Unlock to see"}
        </Button>
        <Button wide onPress={() => sealedCalls.answer(now)}>
          Stop the alarm only
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}

/** On the locked screen: when it will call next, and whether it can be heard. */
export function SealedNext() {
  const next = instantsOf(useWatched(sealedCalls))[0];
  const now = useNow(next !== undefined);
  if (next === undefined) return null;
  const isHeard = alarm.isArmed();
  return (
    <Notice tone={isHeard ? "plain" : "attention"} title="An alarm is set on this device">
      <p>
        {next > now ? "It calls at" : "It was due at"} <Timestamp at={new Date(next).toISOString()} as="time" />. What
        it is about shows once this is opened.
      </p>
      {!isHeard && <p>Touch this screen once: until then the browser may keep it silent. Leave the screen on.</p>}
    </Notice>
  );
}
