import type { CasualtyState, ReviewAbout } from "#readiness";
import { noteReview, reportStep } from "#station";
import { allSteps, patternKey, type Pattern } from "#kit";
import { useState } from "react";
import { useSaving } from "#web/act/use-saving.ts";
import { useCarryOut, type StationView } from "#web/device/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { Button, ErrorBox, Section, TextField, Timestamp } from "#web/parts/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";

const ABOUT: readonly { readonly id: ReviewAbout; readonly words: string }[] = [
  { id: "went-well", words: "Went well" },
  { id: "went-badly", words: "Went badly" },
  { id: "kit", words: "A kit" },
  { id: "pattern", words: "A line of the card" },
];

interface PartProps {
  readonly casualty: CasualtyState;
  readonly view: StationView;
}

/** What people add to it: anybody who was there, each in their own words. */
export function ToldPart({ casualty, view }: PartProps) {
  const carryOut = useCarryOut();
  const saving = useSaving();
  const [about, setAbout] = useState<ReviewAbout>("went-well");
  const [note, setNote] = useState("");
  const [number, setNumber] = useState("");
  const pattern = about === "pattern" ? patternOf(casualty, view) : undefined;
  const step = pattern && allSteps(pattern).find(({ line }) => `${line}` === number.trim());
  const isUnknown = pattern !== undefined && number.trim() !== "" && step === undefined;
  const save = async () => {
    const said = note.trim();
    const isSaved = await saving.save(async () => {
      await carryOut((doing) => noteReview(doing, casualty, { about, note: said }));
      if (!pattern || !step) return;
      const body = { step: step.id, what: "unclear" as const, note: said };
      await carryOut((doing) => reportStep(doing, patternKey(pattern), body));
    });
    if (!isSaved) return;
    setNote("");
    setNumber("");
  };
  return (
    <Section title="What people saw">
      {(casualty.reviewNotes ?? []).map(({ entry, at, by, about: of, note: text }) => (
        <p key={entry}>
          <strong>{ABOUT.find(({ id }) => id === of)?.words}</strong>, {nameOf(view, by)},{" "}
          <Timestamp at={at} as="day" />: {text}
        </p>
      ))}
      <PickRow label="About" options={ABOUT} picked={about} onPick={setAbout} />
      {pattern && (
        <TextField
          label="Number of the line on the card, if one"
          hint="Then the owner of the pattern is told too."
          value={number}
          onChange={setNumber}
          isShort
          {...(isUnknown && { fault: `No line of ${pattern.name} has that number.` })}
        />
      )}
      <TextField label="What you saw" value={note} onChange={setNote} isLong />
      <ErrorBox error={saving.error} title="Not written" />
      <Button wide isDisabled={note.trim() === "" || isUnknown} onPress={() => void save()}>
        Add it
      </Button>
    </Section>
  );
}

/** The pattern of the first of our kits there. */
function patternOf(casualty: CasualtyState, view: StationView): Pattern | undefined {
  const kits = new Set(casualty.pumps.flatMap(({ kit }) => kit ?? []));
  const kit = [...view.kits, ...view.retired].find(({ id }) => kits.has(id));
  return kit && view.patterns.get(kit.pattern);
}
