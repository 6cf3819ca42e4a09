import type { Check } from "#kit";
import { Button, GloveRow } from "../../parts/index.ts";
import type { Reading } from "./typed-reading.ts";
import { saySeen } from "./wording.ts";
import { writeValue } from "./reading.ts";

interface AnswerBarProps {
  readonly check: Check | undefined;
  readonly reading: Reading;
  readonly onSeen: () => void;
  readonly onWrong: () => void;
  readonly onNotPossible: () => void;
}

/** The three answers, for gloves: what was seen in words, found wrong, not possible. */
export function AnswerBar({ check, reading, onSeen, onWrong, onNotPossible }: AnswerBarProps) {
  const outside = reading.kind === "read" && !reading.judgement.right;
  return (
    <fieldset className="answer-bar">
      <legend className="for-readers-only">Answer</legend>
      {!outside && (
        <Button kind="primary" wide onPress={onSeen}>
          {seenWords(check, reading)}
        </Button>
      )}
      <GloveRow>
        <Button kind="primary" tone="grave" onPress={onWrong}>
          {outside ? `Found wrong: ${writeValue(reading.value)}` : "Found wrong"}
        </Button>
        <Button onPress={onNotPossible}>Not possible</Button>
      </GloveRow>
    </fieldset>
  );
}

/** "Seen: 55 cm" once read; otherwise what the check wants to see. */
function seenWords(check: Check | undefined, reading: Reading): string {
  return reading.kind === "read" ? `Seen: ${writeValue(reading.value)}` : saySeen(check);
}
