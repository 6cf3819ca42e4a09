import { useState } from "react";
import { useLocation } from "wouter";
import { modesOf, type Pattern } from "#kit";
import type { PhotoRef } from "#readiness";
import { useRecorder } from "../../device/index.ts";
import { Button, Choice, ErrorBox, PhotoStrip, TextField, useDoing } from "../../parts/index.ts";
import { KitActs } from "../turnaround/acts.ts";
import type { KitAtHand } from "../turnaround/at-hand.ts";
import { OTHER, sayEffect, type FindingChoice, type PickedMode } from "../turnaround/finding-choice.ts";
import { optionsOf, pickedKey, pickFrom } from "../turnaround/mode-options.ts";
import { OtherMode } from "../turnaround/other-mode.tsx";
import { KitFormPage } from "./kit-form-page.tsx";

/** A finding raised outside a turnaround: seen in passing, at a muster, by an assessor. */
export default function RaiseFindingPage() {
  return <KitFormPage title={(kit) => `Found wrong on ${kit}`}>{(at) => <RaiseForm at={at} />}</KitFormPage>;
}

function RaiseForm({ at }: { readonly at: KitAtHand }) {
  const recorder = useRecorder();
  const doing = useDoing();
  const [, go] = useLocation();
  const [item, setItem] = useState("");
  const [picked, setPicked] = useState<PickedMode>();
  const [note, setNote] = useState("");
  const [photos, setPhotos] = useState<readonly PhotoRef[]>([]);
  const choices = choicesFor(at.pattern, item);
  const isReady = picked !== undefined && (picked.mode !== OTHER || note.trim() !== "");
  const raise = async () => {
    if (!picked) return;
    const details = { photos, ...(note.trim() !== "" && { note: note.trim() }) };
    const acts = new KitActs(recorder, at.view, at.kit);
    if (await doing.run(() => acts.raise({}, undefined, picked, details))) go(`/kit/${at.kit.id}`);
  };
  return (
    <>
      <ItemChoice pattern={at.pattern} item={item} onChoose={(id) => (setItem(id), setPicked(undefined))} />
      {choices.length > 0 && (
        <Choice
          label="What is wrong?"
          options={optionsOf(choices, sayEffect)}
          value={picked && pickedKey(picked)}
          onChange={(key) => setPicked(pickFrom(choices, key))}
        />
      )}
      {picked?.mode === OTHER && (
        <OtherMode pattern={at.pattern} choices={choices} picked={picked} onPick={setPicked} />
      )}
      {picked && (
        <>
          <TextField
            label={picked.mode === OTHER ? "What is wrong, in your words" : "Note, if any"}
            value={note}
            onChange={setNote}
            isLong
          />
          <PhotoStrip photos={photos} label="Finding" onAdd={(photo) => setPhotos([...photos, photo])} />
        </>
      )}
      <ErrorBox error={doing.error} title="Not raised" />
      <Button kind="primary" isDisabled={!isReady} isBusy={doing.isBusy} onPress={() => void raise()}>
        Raise the finding
      </Button>
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
  return (
    <label className="field">
      <span className="field-label">On which item?</span>
      <select className="field-input" value={item} onChange={(event) => onChoose(event.target.value)}>
        <option value="">Choose an item</option>
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

function choicesFor(pattern: Pattern, id: string): readonly FindingChoice[] {
  const item = pattern.items.find((one) => one.id === id);
  return item ? [{ item, modes: modesOf(pattern, id) }] : [];
}
