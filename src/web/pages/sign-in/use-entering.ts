import { useState } from "react";
import { useLocation } from "wouter";
import { useThisDevice, type SignInOutcome } from "../../device/index.ts";
import type { Reply } from "../../device/server-door.ts";
import type { SignedIn } from "#station";

export interface Entering {
  readonly isBusy: boolean;
  /** Why the last try did not go through. */
  readonly outcome: Exclude<SignInOutcome, { kind: "signed-in" }> | undefined;
  /** Tries; goes to the board when it went through. */
  readonly enter: (ask: () => Promise<Reply<SignedIn>>) => Promise<void>;
}

/** The one way in, whatever is shown at the door. */
export function useEntering(): Entering {
  const device = useThisDevice();
  const [, go] = useLocation();
  const [isBusy, setBusy] = useState(false);
  const [outcome, setOutcome] = useState<Entering["outcome"]>();
  const enter = async (ask: () => Promise<Reply<SignedIn>>) => {
    setBusy(true);
    setOutcome(undefined);
    const ended = await device.takeSeat(ask());
    setBusy(false);
    if (ended.kind === "signed-in") go("/", { replace: true });
    else setOutcome(ended);
  };
  return { isBusy, outcome, enter };
}
