import { sayStationClock } from "#web/device/index.ts";
import type { Alarm } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Notice } from "../notice.tsx";

/** The fault is the station's: nobody should set a phone by it. */
export function StationClockNotice({ off }: Pick<Extract<Alarm, { kind: "station-clock" }>, "off">) {
  const words = useWords("notices");
  return (
    <Notice tone="attention" title={sayStationClock(off, words)}>
      <p>{words.stationClockMore()}</p>
    </Notice>
  );
}
