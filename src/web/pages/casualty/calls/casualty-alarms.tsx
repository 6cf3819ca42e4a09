import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import type { CasualtyState } from "#readiness";
import { useEffect } from "react";
import { sealedCalls, useDeviceState } from "#web/device/index.ts";
import { useArming, useNow } from "#web/timing/index.ts";
import { believableOf } from "#questions";
import { callingOf, duesOf, type Due } from "./due.ts";
import { RefuelCall, SoundCall } from "./due-calls.tsx";
import { useWatched } from "#web/watched/index.ts";
import { SoundingClock } from "../soundings/sounding-clock.tsx";
import { levelInHand, soundingClocks } from "../soundings/sounding-clocks.ts";
import { putOffCalls } from "./put-off.ts";
import { silencedAlarms } from "./silenced.ts";

interface AlarmsProps {
  readonly open: readonly CasualtyState[];
}

/** Watches every space and every running pump of each open casualty, and calls over whatever page is shown. */
export default function CasualtyAlarms({ open }: AlarmsProps) {
  const words = useWords("calls");
  const casualties = open.map((one) => believableOf(one).casualty);
  return (
    <>
      {casualties.flatMap((casualty) =>
        casualty.spaces.map(({ id }) => <SoundingClock key={`${casualty.id} ${id}`} casualty={casualty} space={id} />),
      )}
      <Calls open={casualties} words={words} />
    </>
  );
}

interface CallsProps extends AlarmsProps {
  /** Here since a casualty is open: what calls must not wait for its words. */
  readonly words: Words["calls"];
}

function Calls({ open, words }: CallsProps) {
  const now = useNow(true);
  const clocks = useWatched(soundingClocks);
  const heldBack = {
    silenced: useWatched(silencedAlarms),
    putOff: useWatched(putOffCalls),
    tapped: useWatched(levelInHand),
  };
  useArming();
  const dues = open.flatMap((casualty) => duesOf(casualty, clocks, now)).sort((one, other) => one.at - other.at);
  useSealed(dues, heldBack.silenced);
  const due = callingOf(dues, heldBack, now);
  const casualty = open.find(({ id }) => id === due?.casualty);
  if (!due || !casualty) return null;
  const Call = due.task.kind === "refuel" ? RefuelCall : SoundCall;
  return <Call key={due.key} due={due} casualty={casualty} now={now} words={words} />;
}

/** While the lock of this device is open: writes down when it calls, so that it still does once it is locked. */
function useSealed(dues: readonly Due[], silenced: readonly string[]): void {
  const state = useDeviceState();
  const isLockable = state.kind === "signed-in" && state.lock === "open";
  const instants = dues.flatMap(({ key, at }) => (silenced.includes(key) ? [] : [at])).join(" ");
  useEffect(() => {
    if (isLockable) sealedCalls.note("casualty", instants === "" ? [] : instants.split(" ").map(Number));
  }, [isLockable, instants]);
  useEffect(() => (isLockable ? () => sealedCalls.note("casualty", []) : undefined), [isLockable]);
}
