import { sayStationClock } from "../../device/index.ts";
import type { Alarm } from "../../device/index.ts";
import { Notice } from "../notice.tsx";

/** The fault is the station's: nobody should set a phone by it. */
export function StationClockNotice({ off }: Pick<Extract<Alarm, { kind: "station-clock" }>, "off">) {
  return (
    <Notice tone="attention" title={sayStationClock(off)}>
      <p>
        Do not set this device by it. Lines keep the time of this device, and the station takes them; when they were
        received is noted by the wrong clock. Tell whoever looks after the station's computer to set its date, time and
        time zone to automatic.
      </p>
    </Notice>
  );
}
