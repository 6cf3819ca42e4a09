import { InputError } from "#base";
import type { Entry } from "#log";
import type { EntryKind } from "#readiness";
import type { Act, ActContext } from "#station";
import { useCallback } from "react";
import { deviceAmbient } from "./clock.ts";
import type { StationView } from "./sync/contract.ts";
import { useRecorder, useStation } from "./context.ts";

/** What the rules of the station want to know of whoever does something here. */
export function doingOf(view: StationView): ActContext {
  const { me, today, kits, retired, places, people, boats, devices, parts, patterns, policy } = view;
  const { casualties, qualifications, practised } = view;
  const worked = { kits, retired, casualties, qualifications, practised };
  return { me, today, ...worked, places, people, boats, devices, parts, patterns, policy };
}

/**
 * Carries out what a person wants to do: the station's rule judges, and what passes is written.
 * @returns a function that resolves once the line is on this device's disk, and rejects with every reason against it
 */
export function useCarryOut(): <K extends EntryKind>(want: (doing: ActContext) => Act<K>) => Promise<Entry> {
  const view = useStation();
  const recorder = useRecorder();
  return useCallback(
    async (want) => {
      const act = want({ ...doingOf(view), now: deviceAmbient.now() });
      if (act.kind === "refused") throw new InputError(act.because);
      return recorder.record(act.draft);
    },
    [view, recorder],
  );
}
