import { useState } from "react";
import { useThisDevice, type Alarm } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonRow } from "../button.tsx";
import { Notice } from "../notice.tsx";

interface OtherHistoryProps {
  readonly doubts: Extract<Alarm, { kind: "other-history" }>["doubts"];
}

/** The station had signed something else before this device: whoever looks after it must know, and nobody may guess why. */
export function OtherHistoryNotice({ doubts }: OtherHistoryProps) {
  const { witness } = useThisDevice();
  const words = useWords("notices");
  const [isBusy, setBusy] = useState(false);
  const takeNote = () => {
    setBusy(true);
    void witness.takeNote().finally(() => setBusy(false));
  };
  return (
    <Notice tone="wrong" title={words.otherHistory()} isNews>
      <ul>
        {doubts.map(({ place, because }) => (
          <li key={place}>{because[0]?.toUpperCase() + because.slice(1)}.</li>
        ))}
      </ul>
      <p>{words.otherHistoryMore()}</p>
      <ButtonRow>
        <Button onPress={() => void witness.save(new Date().toISOString())}>{words.otherHistorySave()}</Button>
        <Button onPress={takeNote} isBusy={isBusy}>
          {words.otherHistoryKnow()}
        </Button>
      </ButtonRow>
    </Notice>
  );
}
