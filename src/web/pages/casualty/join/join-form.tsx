import { useWords } from "#web/language/index.ts";
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
  const words = useWords("sheetJoin");
  const { casualty, write, isBusy } = useSheet();
  const [said, setSaid] = useState<Said>(new Map());
  const questions = questionsOf(casualty, other);
  const join = async () => {
    const same = sameOf(questions, said);
    if (await write(words.wroteJoined(), (doing, now) => joinSheets(doing, now, other, same))) onDone();
  };
  const ask = (question: Question) => <Same key={question.other} question={question} said={said} onSay={setSaid} />;
  return (
    <Notice title={words.joinAsk({ other: other.name, casualty: casualty.name })}>
      <p>{words.joinMore()}</p>
      {questions.spaces.map(ask)}
      {questions.pumps.map(ask)}
      <ButtonRow>
        <Button onPress={onDone}>{words.goBack()}</Button>
        <Button kind="primary" isBusy={isBusy} onPress={() => void join()}>
          {words.joinDo()}
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
  const words = useWords("sheetJoin");
  const value = (said.has(other) ? said.get(other) : likely) ?? OWN;
  return (
    <CardSelect
      label={words.sameIs({ name })}
      value={value}
      options={[
        ...choices.map((one) => ({ value: one.id, label: words.our({ name: one.name }) })),
        { value: OWN, label: words.another() },
      ]}
      onChange={(id) => onSay(new Map([...said, [other, id === OWN ? undefined : id]]))}
    />
  );
}
