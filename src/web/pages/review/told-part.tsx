import { useWords, withParts } from "#web/language/index.ts";
import type { Words } from "#words";
import type { Bodies, CasualtyState, ReviewAbout } from "#readiness";
import { noteReview, reportStep } from "#station";
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
  const pattern = about === "pattern" ? patternOf(casualty, view) : undefined;
  const step = pattern && allSteps(pattern).find(({ line }) => `${line}` === number.trim());
  const isUnknown = pattern !== undefined && number.trim() !== "" && step === undefined;
  const isUnsaid = step !== undefined && what === undefined;
  const save = async () => {
    if (about === undefined) return;
    const said = note.trim();
    const isSaved = await saving.save(async () => {
      await carryOut((doing) => noteReview(doing, casualty, { about, note: said }));
      if (!pattern || !step || !what) return;
      const body = { step: step.id, what, note: said, casualty: casualty.id };
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
      <PickRow label={words.about()} options={options} picked={about} onPick={setAbout} />
      {pattern && (
        <TextField
          label={words.lineNumber()}
          hint={step ? words.lineIs({ line: step.text }) : words.lineNumberHint()}
          value={number}
          onChange={(typed) => {
            setNumber(typed);
            setWhat(undefined);
          }}
          isShort
          {...(isUnknown && { fault: words.noLine({ pattern: pattern.name }) })}
        />
      )}
      {step && <PickRow label={words.whatOfLine()} options={whatOptions(words)} picked={what} onPick={setWhat} />}
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

/** The pattern of the first of our kits there. */
function patternOf(casualty: CasualtyState, view: StationView): Pattern | undefined {
  const kits = new Set(casualty.pumps.flatMap(({ kit }) => kit ?? []));
  const kit = [...view.kits, ...view.retired].find(({ id }) => kits.has(id));
  return kit && view.patterns.get(kit.pattern);
}
