import { useThisDevice, type Alarm, type StationView } from "../../device/index.ts";
import { Button } from "../button.tsx";
import { Notice } from "../notice.tsx";
import { sayInstant } from "../words/say-time.ts";

/** What is shown is the station's own summary: what it lacks, and that nothing here has checked it yet. */
export function EarlyNotice({ early }: { readonly early: NonNullable<StationView["early"]> }) {
  return (
    <Notice tone="attention" title="This is the station's summary. Its log is still being fetched.">
      <p>
        Made by the station on {sayInstant(early.at)}, and not yet checked on this device. {sayCounts(early)} Until all
        are, histories, records, trends and older casualties are not whole, and what others write may show late. What
        you write is kept and sent as ever.
      </p>
    </Notice>
  );
}

function sayCounts({ here, of }: NonNullable<StationView["early"]>): string {
  const [some, all] = [here, of].map((count) => count.toLocaleString("en-GB"));
  return `${some} of ${all} lines are here.`;
}

/** The lines do not come to what the station said: the board before was wrong, or the station lost lines since. */
export function FalseSnapshotNotice({ found }: Extract<Alarm, { kind: "false-snapshot" }>) {
  const device = useThisDevice();
  return (
    <Notice tone="wrong" title="The board this device showed at first was not what the log says" isNews>
      <p>
        It came from the station as a summary. Once all lines were here, on {sayInstant(found)}, they did not bear it
        out: the summary was wrong, or the station has since lost lines. It has been thrown away, and what you see now
        comes from the lines alone. Look again at whatever you decided by the first board, and tell whoever looks after
        the server.
      </p>
      <p>
        <Button onPress={() => void device.held.forgetFalseSnapshot()}>I have read this</Button>
      </p>
    </Notice>
  );
}
