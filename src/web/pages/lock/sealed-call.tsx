import { sayDuration } from "#words";
import { useEffect, useState } from "react";
import { instantsOf, sealedCalls, useDeviceState } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, GloveRow, Notice, sayTime } from "#web/parts/index.ts";
import { AlarmCall } from "#web/timing/alarm-call.tsx";
import { alarm, useArming, useNow } from "#web/timing/index.ts";
import { useWatched } from "#web/watched/index.ts";

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
  const words = useWords("lock");
  const isBeside = useDeviceState().kind === "signed-in";
  const over = now - due < 60_000 ? words.now() : words.over({ duration: sayDuration((now - due) / 1000, "face") });
  return (
    <AlarmCall caller={words.title()} title={words.due()} face={over}>
      <p>{words.dueMore()}</p>
      <GloveRow>
        <Button kind="primary" wide onPress={onUnlock}>
          {isBeside ? words.inAMinute() : words.unlock()}
        </Button>
        <Button wide onPress={() => sealedCalls.answer(now)}>
          {words.stopAlarm()}
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}

/** On the locked screen: when it will call next, and whether it can be heard. */
export function SealedNext() {
  const words = useWords("lock");
  const next = instantsOf(useWatched(sealedCalls))[0];
  const now = useNow(next !== undefined);
  if (next === undefined) return null;
  const isHeard = alarm.isArmed();
  return (
    <Notice tone={isHeard ? "plain" : "attention"} title={words.alarmSet()}>
      <p>{next > now ? words.callsAt({ time: sayTime(next) }) : words.wasDueAt({ time: sayTime(next) })}</p>
      {!isHeard && <p>{words.touchOnce()}</p>}
    </Notice>
  );
}
