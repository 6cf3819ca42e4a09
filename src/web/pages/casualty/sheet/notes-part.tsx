import { useWords, withParts } from "#web/language/index.ts";
import type { Words } from "#words";
import type { Bodies } from "#readiness";
import { noteCasualty } from "#station";
import { useState } from "react";
import { Button, Section, TextField, Timestamp } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { SituationNow } from "../launch/situation/situation-now.tsx";
import { useSheet } from "./use-sheet.ts";

type About = Bodies["casualty-noted"]["about"];

function aboutOptions(words: Words["sheet"]): readonly { readonly id: About; readonly words: string }[] {
  return [
    { id: "people", words: words.aboutPeople() },
    { id: "boat", words: words.aboutBoat() },
    { id: "other", words: words.aboutOther() },
  ];
}

/** Notes: who is aboard, what was done, what the skipper said. */
export function NotesPart() {
  const words = useWords("sheet");
  const { casualty, view, write, isBusy } = useSheet();
  const [about, setAbout] = useState<About>("people");
  const [note, setNote] = useState("");
  const save = async () => {
    const body = { about, note: note.trim() };
    if (await write(words.wroteNote(), (doing, now) => noteCasualty(doing, now, body))) setNote("");
  };
  return (
    <Section title={words.notes()}>
      {casualty.notes.length > 0 && (
        <ul className="casualty-list">
          {casualty.notes.map(({ entry, at, by, note: text }) => (
            <li key={entry}>
              {withParts(words.noteLine, { at: <Timestamp at={at} as="time" />, person: nameOf(view, by), note: text })}
            </li>
          ))}
        </ul>
      )}
      <PickRow label={words.about()} options={aboutOptions(words)} picked={about} onPick={setAbout} />
      <TextField label={words.note()} hint={words.noteHint()} value={note} onChange={setNote} isLong />
      <Button wide isBusy={isBusy} isDisabled={note.trim() === ""} onPress={() => void save()}>
        {words.writeNote()}
      </Button>
      <SituationNow />
    </Section>
  );
}
