import { useState } from "react";
import type { Effect } from "#kit";
import type { Entry } from "#log";
import type { PhotoRef } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { useRecorder } from "#web/device/index.ts";
import { Button, Dialog, ErrorBox, TextField } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { PhotoStrip } from "#web/parts/photo-strip.tsx";
import { findingChoices, OTHER, preselect, type FindingChoice, type PickedMode } from "#web/act/finding-choice.ts";
import { OtherMode } from "#web/act/other-mode.tsx";
import { pickFrom, pickedKey, optionsOf } from "#web/act/mode-options.ts";
import type { Answering } from "./use-answering.ts";
import { useKept } from "#web/act/use-kept.ts";
import { useSaving } from "#web/act/use-saving.ts";

interface FindingSheetProps extends Answering {
  /** The found-wrong answer just given; taking back strikes it. */
  readonly answer: Entry | undefined;
  /** Effect that a measurement points to; its mode then stands chosen. */
  readonly likely?: Effect;
  readonly onRaised: (picked: PickedMode) => void;
  readonly onClose: () => void;
}

/** What is told beside the mode: it stays on the device where the sheet is left, until the finding is raised or taken back. */
interface Told {
  readonly note: string;
  readonly photos: readonly PhotoRef[];
}

const NOTHING: Told = { note: "", photos: [] };

/** Raises a finding: item and mode stand chosen from the check, so one more tap is enough. */
export function FindingSheet(props: FindingSheetProps) {
  const { open, line, ask } = props;
  const words = useWords("turnaroundFit");
  const choices = findingChoices(open.pattern, line.step, ask.check);
  const [picked, setPicked] = useState<PickedMode | undefined>(() => preselect(choices, props.likely));
  const kept = useKept<Told>(`finding.${open.turnaround.id}.${ask.key}`, NOTHING);
  const { note, photos } = kept.value;
  const [isTold] = useState(note !== "" || photos.length > 0);
  return (
    <Dialog title={words.foundWrongAt({ line: line.step.line })} isOpen onClose={props.onClose}>
      <ModeChoice choices={choices} picked={picked} onPick={setPicked} />
      {(picked === undefined || picked.mode === OTHER) && (
        <OtherMode pattern={open.pattern} choices={choices} picked={picked} onPick={setPicked} />
      )}
      <details className="extras" open={picked?.mode === OTHER || isTold}>
        <summary>{words.noteOrPhoto()}</summary>
        <TextField
          label={words.whatIsWrongWords()}
          value={note}
          onChange={(next) => kept.change({ note: next, photos })}
          isLong
        />
        <PhotoStrip
          photos={photos}
          label={words.finding()}
          onAdd={(photo) => kept.change({ note, photos: [...photos, photo] })}
        />
      </details>
      <Ways {...props} picked={picked} note={note.trim()} photos={photos} onSettled={kept.clear} />
    </Dialog>
  );
}

interface ModeChoiceProps {
  readonly choices: readonly FindingChoice[];
  readonly picked: PickedMode | undefined;
  readonly onPick: (mode: PickedMode) => void;
}

function ModeChoice({ choices, picked, onPick }: ModeChoiceProps) {
  const words = useWords("turnaroundFit");
  const options = optionsOf(choices, useWords("kitLine"));
  if (options.length === 1) return null;
  return (
    <Choice
      label={words.whatIsWrong()}
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
  /** Nothing of what was told is needed any more. */
  readonly onSettled: () => void;
}

/** Raise it, leave it for later, or take the answer back. */
function Ways({ open, acts, line, ask, answer, picked, note, photos, onSettled, onRaised, onClose }: WaysProps) {
  const recorder = useRecorder();
  const words = useWords("turnaroundFit");
  const saving = useSaving();
  const where = { turnaround: open.turnaround.id, step: line.step.id };
  const incomplete = !picked || (picked.mode === OTHER && note === "");
  const raise = async () => {
    if (!picked) return;
    const details = { photos, ...(note !== "" && { note }) };
    if (!(await saving.save(() => acts.raise(where, ask.check?.id, picked, details)))) return;
    onSettled();
    onClose();
    onRaised(picked);
  };
  const takeBack = async () => {
    if (!answer || !(await saving.save(() => recorder.strike(answer, words.takenBackAtOnce())))) return;
    onSettled();
    onClose();
  };
  return (
    <div className={picked?.mode === OTHER ? "sheet-ways" : "sheet-ways sheet-ways-near"}>
      <ErrorBox error={saving.error} title={words.notRaised()} />
      <Button kind="primary" wide isDisabled={incomplete} onPress={() => void raise()}>
        {words.raise()}
      </Button>
      {incomplete && <p className="quiet">{words.somethingElse()}</p>}
      {answer ? (
        <Button wide onPress={() => void takeBack()}>
          {words.notWrong()}
        </Button>
      ) : (
        <Button wide onPress={onClose}>
          {words.goBack()}
        </Button>
      )}
    </div>
  );
}
