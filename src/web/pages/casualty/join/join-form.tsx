import type { CasualtyState } from "#readiness";
import { joinSheets } from "#station";
import { useState } from "react";
import { Button, ButtonRow, Notice } from "#web/parts/index.ts";
import { CardSelect } from "../card/card-select.tsx";
import { useSheet } from "../sheet/use-sheet.ts";
import { questionsOf, sameOf, type Question, type Said } from "./suggest-same.ts";

interface JoinFormProps {
  readonly other: CasualtyState;
  readonly onDone: () => void;
}

/** Asks what of the two sheets is the same, then reads them as one. */
export function JoinForm({ other, onDone }: JoinFormProps) {
  const { casualty, write, isBusy } = useSheet();
  const [said, setSaid] = useState<Said>(new Map());
  const questions = questionsOf(casualty, other);
  const join = async () => {
    const same = sameOf(questions, said);
    if (await write("joined with another sheet", (doing, now) => joinSheets(doing, now, other, same))) onDone();
  };
  const ask = (question: Question) => <Same key={question.other} question={question} said={said} onSay={setSaid} />;
  return (
    <Notice title={`${other.name} and ${casualty.name} are one casualty?`}>
      <p>
        Both histories stand in one order from then on, and soundings and pumps of both are computed together. A kit on
        both counts once. Nothing is lost, and striking the line parts them again.
      </p>
      {questions.spaces.map(ask)}
      {questions.pumps.map(ask)}
      <ButtonRow>
        <Button onPress={onDone}>Go back</Button>
        <Button kind="primary" isBusy={isBusy} onPress={() => void join()}>
          One casualty: join the sheets
        </Button>
      </ButtonRow>
    </Notice>
  );
}

interface SameProps {
  readonly question: Question;
  readonly said: Said;
  readonly onSay: (said: Said) => void;
}

/** Not one of ours. */
const OWN = "";

function Same({ question: { other, name, choices, likely }, said, onSay }: SameProps) {
  const value = (said.has(other) ? said.get(other) : likely) ?? OWN;
  return (
    <CardSelect
      label={`${name}, of the other sheet, is`}
      value={value}
      options={[
        ...choices.map((one) => ({ value: one.id, label: `our ${one.name}` })),
        { value: OWN, label: "another one" },
      ]}
      onChange={(id) => onSay(new Map([...said, [other, id === OWN ? undefined : id]]))}
    />
  );
}
