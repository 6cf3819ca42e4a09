import type { Pattern } from "#kit";
import type { Bodies } from "#readiness";
import { cardPictures, reportStep } from "#station";
import { useState } from "react";
import { useSaving } from "#web/act/use-saving.ts";
import { useCarryOut, useDeviceState } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, Notice, TextField } from "#web/parts/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import type { Words } from "#words";
import type { CardKit } from "./card-kits.ts";
import { CardSelect } from "./card-select.tsx";

type What = Bodies["step-reported"]["what"];

interface ReportPictureProps {
  readonly kit: CardKit;
  readonly pattern: Pattern;
}

/** Tells the pattern's owner that a picture of the card is wrong, impossible or unclear; also without a network. */
export function ReportPicture(props: ReportPictureProps) {
  const words = useWords("casualty");
  const state = useDeviceState();
  // Beside the lock nobody has signed in, so nobody would have told it.
  if (state.kind === "signed-in" && state.isBeside) return null;
  return (
    <details className="extras">
      <summary>{words.tellPicture()}</summary>
      <PictureForm {...props} />
    </details>
  );
}

function PictureForm({ kit, pattern }: ReportPictureProps) {
  const words = useWords("casualty");
  const { picture, setPicture, what, setWhat, note, setNote, told, saving, send } = usePictureReport(kit);
  const pictures = cardPictures(pattern).map(({ step, number }) => ({
    value: step.id,
    label: words.pictureOf({ number, words: step.words.en ?? "" }),
  }));
  return (
    <div className="card-report">
      <CardSelect
        label={words.whichPicture()}
        value={picture}
        options={[{ value: "", label: words.choosePicture() }, ...pictures]}
        onChange={setPicture}
      />
      <PickRow label={words.whatOfPicture()} options={whatOptions(words)} picked={what} onPick={setWhat} />
      <TextField label={words.pictureNote()} value={note} onChange={setNote} isLong />
      <Button isDisabled={picture === "" || what === undefined} onPress={() => void send()}>
        {words.tellOwner()}
      </Button>
      {told && <Notice title={words.pictureTold()} isNews />}
      <ErrorBox error={saving.error} title={words.pictureNotTold()} />
    </div>
  );
}

function usePictureReport(kit: CardKit) {
  const carryOut = useCarryOut();
  const saving = useSaving();
  const [picture, setPicture] = useState("");
  const [what, setWhat] = useState<What>();
  const [note, setNote] = useState("");
  const [told, setTold] = useState(false);
  const send = async () => {
    if (what === undefined) return;
    const said = note.trim();
    const about = { step: picture, card: true as const, what, ...(said !== "" && { note: said }) };
    const body = { ...about, ...(kit.isKit && { kit: kit.id }) };
    if (!(await saving.save(() => carryOut((doing) => reportStep(doing, kit.pattern, body))))) return;
    setTold(true);
    setPicture("");
    setWhat(undefined);
    setNote("");
  };
  return { picture, setPicture, what, setWhat, note, setNote, told, saving, send };
}

function whatOptions(words: Words["casualty"]): readonly { readonly id: What; readonly words: string }[] {
  return [
    { id: "wrong", words: words.pictureWrong() },
    { id: "impossible", words: words.pictureImpossible() },
    { id: "unclear", words: words.pictureUnclear() },
  ];
}
