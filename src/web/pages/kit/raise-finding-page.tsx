import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { useLocation, useSearch } from "wouter";
import type { Effect, Pattern } from "#kit";
import type { PhotoRef } from "#readiness";
import { useRecorder } from "#web/device/index.ts";
import { Button, ErrorBox, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { PhotoStrip } from "#web/parts/photo-strip.tsx";
import { KitActs } from "#web/act/acts.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { OTHER, sayEffect } from "#web/act/finding-choice.ts";
import { backFrom, foundAsked, modeOptions, NOTHING_FOUND, pickedMode, type FoundWrong } from "./found-wrong.ts";
import { KitFormPage } from "./kit-form-page.tsx";

const EFFECTS: readonly Effect[] = ["grounds", "limits", "notes"];

/** A finding raised outside a turnaround: seen in passing, at a muster, by an assessor. */
export default function RaiseFindingPage() {
  const words = useWords("keep");
  const back = useBack();
  return (
    <KitFormPage title={(kit) => words.raiseTitle({ kit })} back={back}>
      {(at) => <RaiseForm at={at} />}
    </KitFormPage>
  );
}

/** To the casualty's sheet where the finding comes from there, else to the kit. */
function useBack() {
  const frame = useWords("frame");
  const asked = new URLSearchParams(useSearch());
  return ({ kit, view }: KitAtHand) => backFrom(kit, view.casualties, asked, frame.casualty());
}

function RaiseForm({ at }: { readonly at: KitAtHand }) {
  const words = useWords("keep");
  const recorder = useRecorder();
  const doing = useDoing();
  const [, go] = useLocation();
  const back = useBack();
  const asked = new URLSearchParams(useSearch());
  const [found, setFound] = useState<FoundWrong>(() => foundAsked(at.pattern, asked));
  const [note, setNote] = useState(asked.get("note") ?? "");
  const [photos, setPhotos] = useState<readonly PhotoRef[]>([]);
  const picked = pickedMode(at.pattern, found);
  const isOther = found.mode === OTHER;
  const isReady = picked !== undefined && (!isOther || note.trim() !== "");
  const raise = async () => {
    if (!picked) return;
    const details = { photos, ...(note.trim() !== "" && { note: note.trim() }) };
    const acts = new KitActs(recorder, at.view, at.kit);
    if (await doing.run(() => acts.raise({}, undefined, picked, details))) go(back(at).to);
  };
  return (
    <>
      <FoundFields pattern={at.pattern} found={found} onChange={setFound} />
      {picked && (
        <>
          <TextField label={isOther ? words.wrongInWords() : words.note()} value={note} onChange={setNote} isLong />
          <PhotoStrip photos={photos} label={words.finding()} onAdd={(photo) => setPhotos([...photos, photo])} />
        </>
      )}
      <ErrorBox error={doing.error} title={words.notRaised()} />
      <Button kind="primary" isDisabled={!isReady} isBusy={doing.isBusy} onPress={() => void raise()}>
        {words.raise()}
      </Button>
    </>
  );
}

interface FoundFieldsProps {
  readonly pattern: Pattern;
  readonly found: FoundWrong;
  readonly onChange: (found: FoundWrong) => void;
}

/** The item, then what is wrong with it; for something the pattern does not know, what it means for the kit. */
function FoundFields({ pattern, found, onChange }: FoundFieldsProps) {
  const words = useWords("keep");
  const lineWords = useWords("kitLine");
  return (
    <>
      <ItemChoice pattern={pattern} item={found.item} onChoose={(item) => onChange({ ...NOTHING_FOUND, item })} />
      {found.item !== "" && (
        <Choice
          label={words.whatWrong()}
          options={modeOptions(pattern, found.item, lineWords)}
          value={found.mode}
          onChange={(mode) => onChange({ ...found, mode })}
        />
      )}
      {found.mode === OTHER && (
        <Choice
          label={words.meansForKit()}
          options={EFFECTS.map((effect) => ({ value: effect, label: sayEffect(effect, lineWords) }))}
          value={found.effect}
          onChange={(effect) => onChange({ ...found, effect })}
        />
      )}
      {found.mode === OTHER && found.effect === "limits" && (
        <TextField label={words.limit()} value={found.limit} onChange={(limit) => onChange({ ...found, limit })} />
      )}
    </>
  );
}

interface ItemChoiceProps {
  readonly pattern: Pattern;
  readonly item: string;
  readonly onChoose: (item: string) => void;
}

/** Items under the place where they are stowed. */
function ItemChoice({ pattern, item, onChoose }: ItemChoiceProps) {
  const words = useWords("keep");
  return (
    <label className="field">
      <span className="field-label">{words.onItem()}</span>
      <select className="field-input" value={item} onChange={(event) => onChoose(event.target.value)}>
        <option value="">{words.chooseItem()}</option>
        {pattern.container.places.map((place) => (
          <optgroup key={place.id} label={place.name}>
            {pattern.items
              .filter((one) => one.place === place.id)
              .map((one) => (
                <option key={one.id} value={one.id}>
                  {one.name}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}
