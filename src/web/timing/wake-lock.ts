import { useEffect, useState } from "react";

/** Whether the screen is being kept on: `refused` covers phones that cannot and batteries too low. */
export type WakeState = "held" | "refused" | "off";

/**
 * Keeps the screen on while wanted. A phone drops the lock whenever the page is hidden, so it is asked for again each
 * time the page is seen; a phone that refuses is said so, never retried in a loop.
 */
export function useWakeLock(wanted: boolean): WakeState {
  const [state, setState] = useState<WakeState>("off");
  useEffect(() => {
    if (!wanted) return undefined;
    return holdScreen(setState);
  }, [wanted]);
  return wanted ? state : "off";
}

function holdScreen(report: (state: WakeState) => void): () => void {
  let sentinel: WakeLockSentinel | undefined;
  let over = false;
  const ask = async () => {
    if (over || document.visibilityState !== "visible") return;
    const got = await requestLock();
    if (over) await got?.release();
    else {
      sentinel = got;
      report(got ? "held" : "refused");
    }
  };
  void ask();
  document.addEventListener("visibilitychange", ask);
  return () => {
    over = true;
    document.removeEventListener("visibilitychange", ask);
    void sentinel?.release();
  };
}

async function requestLock(): Promise<WakeLockSentinel | undefined> {
  if (!("wakeLock" in navigator)) return undefined;
  try {
    return await navigator.wakeLock.request("screen");
  } catch (refused) {
    if (refused instanceof DOMException) return undefined;
    throw refused;
  }
}
