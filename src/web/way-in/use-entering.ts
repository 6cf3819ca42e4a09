import { useState } from "react";
import { useLocation } from "wouter";
import { useThisDevice, type SignInOutcome } from "../device/index.ts";
import type { Reply } from "../device/sync/server-door.ts";
import type { SignedIn } from "#station";

export interface Entering {
  readonly isBusy: boolean;
  /** Why the last try did not go through. */
  readonly outcome: Exclude<SignInOutcome, { kind: "signed-in" }> | undefined;
  /** Tries, with the PIN where it is by one; goes to the board when it went through. */
  readonly enter: (ask: () => Promise<Reply<SignedIn>>, pin?: string) => Promise<void>;
}

/** The one way in, whatever is shown at the door. */
export function useEntering(): Entering {
  const device = useThisDevice();
  const [, go] = useLocation();
  const [isBusy, setBusy] = useState(false);
  const [outcome, setOutcome] = useState<Entering["outcome"]>();
  const enter = async (ask: () => Promise<Reply<SignedIn>>, pin?: string) => {
    setBusy(true);
    setOutcome(undefined);
    const ended = await device.takeSeat(ask(), pin);
    setBusy(false);
    if (ended.kind === "signed-in") go("/", { replace: true });
    else setOutcome(ended);
  };
  return { isBusy, outcome, enter };
}
