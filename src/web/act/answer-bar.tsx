import type { Check } from "#kit";
import { useWords } from "../language/index.ts";
import { Button, GloveRow, Notice } from "../parts/index.ts";
import type { Reading } from "./typed-reading.ts";
import { saySeen } from "#readiness";
import type { OneTap } from "./one-tap.ts";
import { writeValue } from "./reading.ts";
import type { AnswerWords } from "./wording.ts";
import "./answer-bar.css";

interface AnswerBarProps {
  readonly check: Check | undefined;
  readonly reading: Reading;
  /** A right answer that needs nothing typed. */
  readonly oneTap?: OneTap | undefined;
  /** What is fitted new with the answer, in words that follow it. */
  readonly isNew?: string;
  /** Why it cannot be answered as seen yet, in place of that button: its clock, pulls or prime come first. */
  readonly held?: string | undefined;
  /** Why the last "seen" was not taken: said where the thumb is. */
  readonly refusal?: string | undefined;
  readonly onSeen: () => void;
  readonly onWrong: () => void;
  readonly onNotPossible: () => void;
}

/** The three answers, for gloves: what was seen in words, found wrong, not possible. */
export function AnswerBar({
  check,
  reading,
  oneTap,
  isNew = "",
  held,
  refusal,
  onSeen,
  onWrong,
  onNotPossible,
}: AnswerBarProps) {
  const words = useWords("act");
  const parts = useWords("parts");
  const outside = reading.kind === "read" && !reading.judgement.right;
  return (
    <fieldset className="answer-bar">
      <legend className="for-readers-only">{words.answer()}</legend>
      {held !== undefined && <p className="for-readers-only">{held}</p>}
      {refusal !== undefined && <Notice tone="wrong" title={refusal} isNews />}
      {!outside && held === undefined && (
        <Button kind="primary" wide onPress={onSeen}>
          {oneTap?.words ?? seenWords(check, reading, { act: words, parts })}
          {isNew}
        </Button>
      )}
      <GloveRow>
        <Button kind="primary" tone="grave" onPress={onWrong}>
          {outside ? words.foundWrongRead({ value: writeValue(reading.value, parts) }) : words.foundWrong()}
        </Button>
        <Button onPress={onNotPossible}>{words.notPossible()}</Button>
      </GloveRow>
    </fieldset>
  );
}

/** "Seen: 55 cm" once read; otherwise what the check wants to see. */
function seenWords(check: Check | undefined, reading: Reading, { act, parts }: AnswerWords): string {
  return reading.kind === "read" ? act.seen({ value: writeValue(reading.value, parts) }) : saySeen(check, act);
}
