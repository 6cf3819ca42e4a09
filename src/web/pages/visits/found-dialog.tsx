import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { Button, Dialog, TextField } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { findingChoices, OTHER, preselect, type PickedMode } from "#web/act/finding-choice.ts";
import { optionsOf, pickedKey, pickFrom } from "#web/act/mode-options.ts";
import { OtherMode } from "#web/act/other-mode.tsx";
import type { LineToLook } from "./visit-at-hand.ts";

interface FoundProps {
  readonly line: LineToLook;
  readonly onClose: () => void;
  readonly onFound: (picked: PickedMode, note: string) => Promise<void>;
}

/** What is wrong: the check's mode stands chosen, so one more tap is enough. */
export function FoundDialog({ line, onClose, onFound }: FoundProps) {
  const lineWords = useWords("kitLine");
  const words = useWords("visit");
  const choices = findingChoices(line.pattern, line.atStep, line.ofCheck);
  const [picked, setPicked] = useState<PickedMode | undefined>(() => preselect(choices));
  const [note, setNote] = useState("");
  const isOther = picked?.mode === OTHER;
  const isReady = picked !== undefined && (!isOther || note.trim() !== "");
  const save = async () => {
    if (!picked) return;
    onClose();
    await onFound(picked, note.trim());
  };
  return (
    <Dialog title={words.foundAt({ line: line.atStep.line })} isOpen onClose={onClose}>
      <Choice
        label={words.whatWrong()}
        options={optionsOf(choices, lineWords)}
        value={picked && pickedKey(picked)}
        onChange={(key) => setPicked(pickFrom(choices, key))}
      />
      {isOther && <OtherMode pattern={line.pattern} choices={choices} picked={picked} onPick={setPicked} />}
      <TextField label={words.whatWrongWords()} value={note} onChange={setNote} isLong limit={2000} />
      <div className="visit-ways">
        <Button kind="primary" wide isDisabled={!isReady} onPress={() => void save()}>
          {words.writeWrong()}
        </Button>
        <Button wide onPress={onClose}>
          {words.goBack()}
        </Button>
      </div>
    </Dialog>
  );
}
