import type { Bodies } from "#readiness";
import { noteCasualty } from "#station";
import { useState } from "react";
import { Button, Section, TextField, Timestamp } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { SituationNow } from "../launch/situation/situation-now.tsx";
import { useSheet } from "./use-sheet.ts";

type About = Bodies["casualty-noted"]["about"];

const ABOUT: readonly { readonly id: About; readonly words: string }[] = [
  { id: "people", words: "People" },
  { id: "boat", words: "The boat" },
  { id: "other", words: "Other" },
];

/** Notes: who is aboard, what was done, what the skipper said. */
export function NotesPart() {
  const { casualty, view, write, isBusy } = useSheet();
  const [about, setAbout] = useState<About>("people");
  const [note, setNote] = useState("");
  const save = async () => {
    const body = { about, note: note.trim() };
    if (await write("note", (doing, now) => noteCasualty(doing, now, body))) setNote("");
  };
  return (
    <Section title="People and notes">
      {casualty.notes.length > 0 && (
        <ul className="casualty-list">
          {casualty.notes.map(({ entry, at, by, note: text }) => (
            <li key={entry}>
              <Timestamp at={at} as="time" /> {nameOf(view, by)}: {text}
            </li>
          ))}
        </ul>
      )}
      <PickRow label="About" options={ABOUT} picked={about} onPick={setAbout} />
      <TextField
        label="Note"
        hint="People aboard, hurt, taken off; what the skipper says."
        value={note}
        onChange={setNote}
        isLong
      />
      <Button wide isBusy={isBusy} isDisabled={note.trim() === ""} onPress={() => void save()}>
        Write the note
      </Button>
      <SituationNow />
    </Section>
  );
}
