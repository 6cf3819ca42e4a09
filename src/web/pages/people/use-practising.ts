import type { Practising } from "#readiness";
import { practisingOf } from "#station";
import { useMemo } from "react";
import { useStation } from "#web/device/index.ts";

/** The station as its practice is read, every kit that ever was here among it. */
export function usePractising(): Practising {
  const view = useStation();
  return useMemo(() => practisingOf(view), [view]);
}
