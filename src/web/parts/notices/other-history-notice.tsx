import { useState } from "react";
import { useThisDevice, type Alarm } from "../../device/index.ts";
import { Button, ButtonRow } from "../button.tsx";
import { Notice } from "../notice.tsx";

interface OtherHistoryProps {
  readonly doubts: Extract<Alarm, { kind: "other-history" }>["doubts"];
}

/** The station had signed something else before this device: whoever looks after it must know, and nobody may guess why. */
export function OtherHistoryNotice({ doubts }: OtherHistoryProps) {
  const { witness } = useThisDevice();
  const [isBusy, setBusy] = useState(false);
  const takeNote = () => {
    setBusy(true);
    void witness.takeNote().finally(() => setBusy(false));
  };
  return (
    <Notice tone="wrong" title="The station's log is not the one this device saw before" isNews>
      <ul>
        {doubts.map(({ place, because }) => (
          <li key={place}>{because[0]?.toUpperCase() + because.slice(1)}.</li>
        ))}
      </ul>
      <p>
        Either the station was put back to an earlier copy, or somebody changed its log. Lines may be missing or
        changed. Tell whoever looks after the station, and save what this device kept: it is the proof.
      </p>
      <ButtonRow>
        <Button onPress={() => void witness.save(new Date().toISOString())}>Save the proof to a file</Button>
        <Button onPress={takeNote} isBusy={isBusy}>
          They know: go on from here
        </Button>
      </ButtonRow>
    </Notice>
  );
}
