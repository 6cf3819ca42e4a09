import { useRecorder, useStation } from "../../device/index.ts";
import { Button, ErrorBox, useDoing } from "../../parts/index.ts";

interface StrikeToldProps {
  readonly person: string;
  /** Id of the line that told of it. */
  readonly entry: string;
}

/** Takes back what was told of a person by mistake: the line is struck and stays in the log. */
export function StrikeTold({ person, entry: id }: StrikeToldProps) {
  const { historyOf } = useStation();
  const recorder = useRecorder();
  const doing = useDoing();
  const strike = () =>
    doing.run(async () => {
      const line = historyOf(`person:${person}`).find(({ entry }) => entry.id === id);
      if (line) await recorder.strike(line.entry, "Told by mistake.");
    });
  return (
    <>
      <Button kind="quiet" isBusy={doing.isBusy} onPress={() => void strike()}>
        Told by mistake
      </Button>
      <ErrorBox error={doing.error} title="Not struck" />
    </>
  );
}
