import { useEffect } from "react";
import { idleShelf, isLeftIdle, sealedCalls, useThisDevice, type StationView } from "#web/device/index.ts";
import { answeredClocks, clockKeyOf, limitInstant, runningTimers, type RunningTimer } from "#web/act/timers.ts";
import { findKit, withTurnaround } from "#web/kit-view/at-hand.ts";
import { useWatched } from "#web/watched/index.ts";

/** How often it is looked [ms]; also at once when the page is seen again. */
const LOOK_MS = 5000;
const TOUCHES = ["pointerdown", "keydown", "wheel", "touchmove"] as const;

/** Locks this device once it was left idle. Draws nothing. */
export function IdleLock({ view }: { readonly view: StationView | undefined }) {
  const { lock } = useThisDevice();
  const choice = useWatched(idleShelf);
  const answered = useWatched(answeredClocks);
  const timers = view === undefined ? [] : ownClocks(view);
  const clocks = timers.map(limitInstant).join(" ");
  const calls = timers.filter((timer) => !answered.includes(clockKeyOf(timer))).map(limitInstant);
  const isSheetOpen = (view?.casualties ?? []).some(({ closed }) => closed === undefined);
  useTouches();
  useSealed(calls);
  useEffect(() => {
    const look = () => {
      const now = Date.now();
      const inUse = { touched: idleShelf.touched(now), isSheetOpen, clocks: instantsIn(clocks) };
      if (lock.progress === undefined && isLeftIdle(choice, inUse, now)) lock.lockNow();
    };
    const looking = setInterval(look, LOOK_MS);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(looking);
      document.removeEventListener("visibilitychange", look);
    };
  }, [lock, choice, clocks, isSheetOpen]);
  return null;
}

/** Opening it is a touch too. */
function useTouches(): void {
  useEffect(() => {
    const touch = () => idleShelf.touch(Date.now());
    touch();
    for (const name of TOUCHES) document.addEventListener(name, touch, { capture: true, passive: true });
    return () => {
      for (const name of TOUCHES) document.removeEventListener(name, touch, { capture: true });
    };
  }, []);
}

/** A clock of a turnaround still calls once the device is locked. */
function useSealed(calls: readonly number[]): void {
  const instants = calls.join(" ");
  useEffect(() => sealedCalls.note("turnaround", instantsIn(instants)), [instants]);
}

function instantsIn(text: string): readonly number[] {
  return text === "" ? [] : text.split(" ").map(Number);
}

/** Clocks that were started on this device. */
function ownClocks(view: StationView): readonly RunningTimer[] {
  return view.kits.flatMap(({ id }) => {
    const at = findKit(view, id);
    const open = at && withTurnaround(at);
    if (!open) return [];
    const { timers } = open.turnaround;
    return runningTimers(open).filter(({ step }) => timers[step.id]?.mark.device === view.device);
  });
}
