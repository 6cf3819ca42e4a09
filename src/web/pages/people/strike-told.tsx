import { useState } from "react";
import { useRecorder, useStation } from "#web/device/index.ts";
import { Button, ConfirmDialog, ErrorBox, useDoing } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

interface StrikeToldProps {
  readonly person: string;
  /** Id of the line that told of it. */
  readonly entry: string;
  /** What was told, as a sentence. */
  readonly told: string;
}

/** Takes back what was told of a person by mistake: the line is struck and stays in the log. */
export function StrikeTold({ person, entry: id, told }: StrikeToldProps) {
  const words = useWords("people");
  const { historyOf } = useStation();
  const recorder = useRecorder();
  const doing = useDoing();
  const [isAsking, setAsking] = useState(false);
  const strike = () =>
    doing.run(async () => {
      const line = historyOf(`person:${person}`).find(({ entry }) => entry.id === id);
      if (line) await recorder.strike(line.entry, "Told by mistake.");
    });
  return (
    <>
      <Button kind="quiet" isBusy={doing.isBusy} onPress={() => setAsking(true)}>
        {words.toldByMistake()}
      </Button>
      <ErrorBox error={doing.error} title={words.notStruck()} />
      <ConfirmDialog
        title={words.strikeAsk()}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void strike().then(() => setAsking(false))}
        confirm={words.strikeDo()}
        isBusy={doing.isBusy}
      >
        <p>
          {told} {words.strikeMore()}
        </p>
      </ConfirmDialog>
    </>
  );
}
