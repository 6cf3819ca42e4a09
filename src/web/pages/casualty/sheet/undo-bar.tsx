import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox } from "#web/parts/index.ts";
import { useSettled } from "./use-settled.ts";
import { useSheet } from "./use-sheet.ts";

/** What was written last, and the way back; what stood against the last try. */
export function UndoBar() {
  const words = useWords("sheet");
  const { last, undo, isBusy, error } = useSheet();
  const isSettled = useSettled();
  return (
    <div className="undo" aria-live="polite">
      <ErrorBox error={error} title={words.notWritten()} />
      {last && error === undefined && (
        <>
          <span>{words.wrote({ what: last.words })}</span>
          <Button isBusy={isBusy} isDisabled={!isSettled} onPress={() => void undo()}>
            {words.undo()}
          </Button>
        </>
      )}
    </div>
  );
}
