import { useThisDevice, type Alarm, type StationView } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button } from "../button.tsx";
import { Notice } from "../notice.tsx";
import { sayInstant } from "../words/say-time.ts";

/** What is shown is the station's own summary: what it lacks, and that nothing here has checked it yet. */
export function EarlyNotice({ early }: { readonly early: NonNullable<StationView["early"]> }) {
  const words = useWords("frame");
  return (
    <Notice tone="attention" title={words.early()}>
      <p>
        {words.earlyMade({ at: sayInstant(early.at) })} {words.earlyCounts(early)} {words.earlyMore()}
      </p>
    </Notice>
  );
}

/** The lines do not come to what the station said: the board before was wrong, or the station lost lines since. */
export function FalseSnapshotNotice({ found }: Extract<Alarm, { kind: "false-snapshot" }>) {
  const device = useThisDevice();
  const words = useWords("notices");
  return (
    <Notice tone="wrong" title={words.falseSummary()} isNews>
      <p>{words.falseSummaryMore({ at: sayInstant(found) })}</p>
      <p>
        <Button onPress={() => void device.held.forgetFalseSnapshot()}>{words.haveRead()}</Button>
      </p>
    </Notice>
  );
}
