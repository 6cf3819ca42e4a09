import { Button, ErrorBox } from "#web/parts/index.ts";
import { useSettled } from "./use-settled.ts";
import { useSheet } from "./use-sheet.ts";

/** What was written last, and the way back; what stood against the last try. */
export function UndoBar() {
  const { last, undo, isBusy, error } = useSheet();
  const isSettled = useSettled();
  return (
    <div className="undo" aria-live="polite">
      <ErrorBox error={error} title="Not written down" />
      {last && error === undefined && (
        <>
          <span>Written: {last.words}.</span>
          <Button isBusy={isBusy} isDisabled={!isSettled} onPress={() => void undo()}>
            Undo
          </Button>
        </>
      )}
    </div>
  );
}
