import type { CasualtyOutcome } from "#readiness";
import { closeCasualty } from "#station";
import { useState } from "react";
import { Button, Section, TextField, Timestamp } from "../../parts/index.ts";
import { nameOf } from "../turnaround/at-hand.ts";
import { OUTCOMES } from "./outcomes.ts";
import { PickRow } from "./pick-row.tsx";
import { useSheet } from "./use-sheet.ts";

const OPTIONS = (Object.keys(OUTCOMES) as CasualtyOutcome[]).map((id) => ({ id, words: OUTCOMES[id] }));

/** Closes the sheet, or says how it was closed. */
export function ClosePart() {
  const { casualty, view, write, isBusy } = useSheet();
  const [outcome, setOutcome] = useState<CasualtyOutcome>();
  const [note, setNote] = useState("");
  if (casualty.closed) {
    const { at, by, outcome: ended, note: said } = casualty.closed;
    return (
      <p className="verdict-detail">
        Closed <Timestamp at={at} /> by {nameOf(view, by)}: {OUTCOMES[ended]}. {said}
      </p>
    );
  }
  const close = () => {
    if (outcome === undefined) return;
    const body = { outcome, ...(note.trim() !== "" && { note: note.trim() }) };
    void write("sheet closed", (doing, now) => closeCasualty(doing, now, body));
  };
  return (
    <Section title="Close the sheet">
      <PickRow label="How did it end?" options={OPTIONS} picked={outcome} onPick={setOutcome} />
      <TextField label="Note, if any" value={note} onChange={setNote} isLong />
      <Button wide tone="grave" isBusy={isBusy} isDisabled={outcome === undefined} onPress={close}>
        Close the sheet
      </Button>
    </Section>
  );
}
