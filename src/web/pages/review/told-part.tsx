import { useWords, withParts } from "#web/language/index.ts";
import type { Words } from "#words";
import type { Bodies, CasualtyState, ReviewAbout } from "#readiness";
import { cardPictures, noteReview, reportStep } from "#station";
import { allSteps, patternKey, type Pattern } from "#kit";
import { useState } from "react";
import { useSaving } from "#web/act/use-saving.ts";
import { useCarryOut, type StationView } from "#web/device/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { Button, ErrorBox, Section, TextField, Timestamp } from "#web/parts/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";

function aboutOptions(words: Words["review"]): readonly { readonly id: ReviewAbout; readonly words: string }[] {
  return [
    { id: "went-well", words: words.wentWell() },
    { id: "went-badly", words: words.wentBadly() },
    { id: "kit", words: words.aKit() },
    { id: "pattern", words: words.aLine() },
    { id: "card", words: words.aPicture() },
  ];
}

type What = Bodies["step-reported"]["what"];

function whatOptions(words: Words["review"]): readonly { readonly id: What; readonly words: string }[] {
  return [
    { id: "wrong", words: words.lineWrong() },
    { id: "impossible", words: words.lineImpossible() },
    { id: "unclear", words: words.lineUnclear() },
  ];
}

interface PartProps {
  readonly casualty: CasualtyState;
  readonly view: StationView;
}

/** What people add to it: anybody who was there, each in their own words. */
export function ToldPart({ casualty, view }: PartProps) {
  const words = useWords("review");
  const options = aboutOptions(words);
  const carryOut = useCarryOut();
  const saving = useSaving();
  const [about, setAbout] = useState<ReviewAbout>();
  const [note, setNote] = useState("");
  const [number, setNumber] = useState("");
  const [what, setWhat] = useState<What>();
  const isOfCard = about === "card";
  const pattern = about === "pattern" || isOfCard ? patternOf(casualty, view) : undefined;
  const step = pattern && numberedIn(pattern, isOfCard).find((one) => `${one.number}` === number.trim());
  const isUnknown = pattern !== undefined && number.trim() !== "" && step === undefined;
  const isUnsaid = step !== undefined && what === undefined;
  const chooseAbout = (id: ReviewAbout) => {
    setAbout(id);
    setNumber("");
    setWhat(undefined);
  };
  const save = async () => {
    if (about === undefined) return;
    const said = note.trim();
    const isSaved = await saving.save(async () => {
      await carryOut((doing) => noteReview(doing, casualty, { about, note: said }));
      if (!pattern || !step || !what) return;
      const told = { what, note: said, casualty: casualty.id };
      const body = { step: step.id, ...(isOfCard && { card: true as const }), ...told };
      await carryOut((doing) => reportStep(doing, patternKey(pattern), body));
    });
    if (!isSaved) return;
    setAbout(undefined);
    setNote("");
    setNumber("");
    setWhat(undefined);
  };
  return (
    <Section title={words.peopleSaw()}>
      {(casualty.reviewNotes ?? []).map(({ entry, at, by, about: of, note: text }) => (
        <p key={entry}>
          {withParts(words.told, {
            about: <strong>{options.find(({ id }) => id === of)?.words}</strong>,
            person: nameOf(view, by),
            at: <Timestamp at={at} as="day" />,
            note: text,
          })}
        </p>
      ))}
      <PickRow label={words.about()} options={options} picked={about} onPick={chooseAbout} />
      {pattern && (
        <TextField
          label={isOfCard ? words.pictureNumber() : words.lineNumber()}
          hint={step ? words.lineIs({ line: step.text }) : words.lineNumberHint()}
          value={number}
          onChange={(typed) => {
            setNumber(typed);
            setWhat(undefined);
          }}
          isShort
          {...(isUnknown && { fault: (isOfCard ? words.noPicture : words.noLine)({ pattern: pattern.name }) })}
        />
      )}
      {step && (
        <PickRow
          label={isOfCard ? words.whatOfPicture() : words.whatOfLine()}
          options={whatOptions(words)}
          picked={what}
          onPick={setWhat}
        />
      )}
      <TextField label={words.youSaw()} value={note} onChange={setNote} isLong />
      <ErrorBox error={saving.error} title={words.notWritten()} />
      <Button
        wide
        isDisabled={about === undefined || note.trim() === "" || isUnknown || isUnsaid}
        onPress={() => void save()}
      >
        {words.add()}
      </Button>
    </Section>
  );
}

interface Numbered {
  readonly id: string;
  readonly number: number;
  readonly text: string;
}

/** Lines of the turnaround's list, or pictures of the card for strangers, by their numbers. */
function numberedIn(pattern: Pattern, isOfCard: boolean): readonly Numbered[] {
  if (!isOfCard) return allSteps(pattern).map(({ id, line, text }) => ({ id, number: line, text }));
  return cardPictures(pattern).map(({ step, number }) => ({ id: step.id, number, text: step.words.en ?? step.id }));
}

/** The pattern of the first of our kits there. */
function patternOf(casualty: CasualtyState, view: StationView): Pattern | undefined {
  const kits = new Set(casualty.pumps.flatMap(({ kit }) => kit ?? []));
  const kit = [...view.kits, ...view.retired].find(({ id }) => kits.has(id));
  return kit && view.patterns.get(kit.pattern);
}
