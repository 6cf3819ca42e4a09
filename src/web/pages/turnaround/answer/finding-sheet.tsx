import { useState } from "react";
import type { Effect } from "#kit";
import type { Entry } from "#log";
import type { PhotoRef } from "#readiness";
import { useRecorder } from "../../../device/index.ts";
import { Button, Dialog, ErrorBox, TextField } from "../../../parts/index.ts";
import { Choice } from "../../../parts/fields/choice.tsx";
import { PhotoStrip } from "../../../parts/photo-strip.tsx";
import {
  findingChoices,
  OTHER,
  preselect,
  sayEffect,
  type FindingChoice,
  type PickedMode,
} from "../../../act/finding-choice.ts";
import { OtherMode } from "./other-mode.tsx";
import { pickFrom, pickedKey, optionsOf } from "./mode-options.ts";
import type { Answering } from "./use-answering.ts";
import { useSaving } from "../../../act/use-saving.ts";

interface FindingSheetProps extends Answering {
  /** The found-wrong answer just given; taking back strikes it. */
  readonly answer: Entry | undefined;
  /** Effect that a measurement points to; its mode then stands chosen. */
  readonly likely?: Effect;
  readonly onRaised: () => void;
  readonly onClose: () => void;
}

/** Raises a finding: item and mode stand chosen from the check, so one more tap is enough. */
export function FindingSheet(props: FindingSheetProps) {
  const { open, line, ask } = props;
  const choices = findingChoices(open.pattern, line.step, ask.check);
  const [picked, setPicked] = useState<PickedMode | undefined>(() => preselect(choices, props.likely));
  const [note, setNote] = useState("");
  const [photos, setPhotos] = useState<readonly PhotoRef[]>([]);
  return (
    <Dialog title={`Found wrong at line ${line.step.line}`} isOpen onClose={props.onClose}>
      <ModeChoice choices={choices} picked={picked} onPick={setPicked} />
      {(picked === undefined || picked.mode === OTHER) && (
        <OtherMode pattern={open.pattern} choices={choices} picked={picked} onPick={setPicked} />
      )}
      <details className="extras" open={picked?.mode === OTHER}>
        <summary>Note or photo</summary>
        <TextField label="What is wrong, in your words" value={note} onChange={setNote} isLong />
        <PhotoStrip photos={photos} label="Finding" onAdd={(photo) => setPhotos([...photos, photo])} />
      </details>
      <Ways {...props} picked={picked} note={note.trim()} photos={photos} />
    </Dialog>
  );
}

interface ModeChoiceProps {
  readonly choices: readonly FindingChoice[];
  readonly picked: PickedMode | undefined;
  readonly onPick: (mode: PickedMode) => void;
}

function ModeChoice({ choices, picked, onPick }: ModeChoiceProps) {
  const options = optionsOf(choices, sayEffect);
  if (options.length === 1) return null;
  return (
    <Choice
      label="What is wrong?"
      options={options}
      value={picked && pickedKey(picked)}
      onChange={(key) => onPick(pickFrom(choices, key))}
    />
  );
}

interface WaysProps extends FindingSheetProps {
  readonly picked: PickedMode | undefined;
  readonly note: string;
  readonly photos: readonly PhotoRef[];
}

/** Raise it, leave it for later, or take the answer back. */
function Ways({ open, acts, line, ask, answer, picked, note, photos, onRaised, onClose }: WaysProps) {
  const recorder = useRecorder();
  const saving = useSaving();
  const where = { turnaround: open.turnaround.id, step: line.step.id };
  const incomplete = !picked || (picked.mode === OTHER && note === "");
  const raise = async () => {
    if (!picked) return;
    const details = { photos, ...(note !== "" && { note }) };
    if (!(await saving.save(() => acts.raise(where, ask.check?.id, picked, details)))) return;
    onClose();
    onRaised();
  };
  const takeBack = async () => {
    if (answer && (await saving.save(() => recorder.strike(answer, "Taken back at once")))) onClose();
  };
  return (
    <div className={picked?.mode === OTHER ? "sheet-ways" : "sheet-ways sheet-ways-near"}>
      <ErrorBox error={saving.error} title="Not raised" />
      <Button kind="primary" wide isDisabled={incomplete} onPress={() => void raise()}>
        Raise the finding
      </Button>
      {incomplete && <p className="quiet">Something else: choose its effect and say what is wrong.</p>}
      {answer ? (
        <Button wide onPress={() => void takeBack()}>
          It is not wrong: take the answer back
        </Button>
      ) : (
        <Button wide onPress={onClose}>
          Go back
        </Button>
      )}
    </div>
  );
}
