import { useState } from "react";
import { useWords } from "../language/index.ts";
import type { Difference } from "#readiness";
import { Button, ErrorBox, Notice, TextField } from "../parts/index.ts";
import type { KitActs } from "../act/acts.ts";
import { sayWho, type KitAtHand } from "./at-hand.ts";
import { sayCandidate } from "./candidate.ts";
import { useSaving } from "../act/use-saving.ts";

interface DifferencesProps {
  readonly open: KitAtHand;
  readonly acts: KitActs;
}

/** What two devices did to the kit without sight of each other: a person looks and says which stands. */
export function Differences({ open, acts }: DifferencesProps) {
  return open.kit.toSettle.map((difference) => (
    <SettleBox key={difference.entries.join(" ")} difference={difference} open={open} acts={acts} />
  ));
}

interface SettleBoxProps extends DifferencesProps {
  readonly difference: Difference;
}

function SettleBox({ difference, open, acts }: SettleBoxProps) {
  const words = useWords("kitView");
  const candidate = { view: words, act: useWords("act"), parts: useWords("parts") };
  const saving = useSaving();
  const [reason, setReason] = useState("");
  const [stands, setStands] = useState<string>();
  const settle = () => {
    if (stands === undefined || reason.trim() === "") return;
    void saving.save(() => acts.settle(difference.entries, stands, reason.trim()));
  };
  return (
    <Notice tone="attention" title={words.differ()}>
      <p>{difference.about}</p>
      <ul className="settle-list">
        {difference.marks.map((mark) => (
          <li key={mark.entry}>
            <p>
              {sayCandidate(open, mark.entry, candidate)} <span className="quiet">({sayWho(open.view, mark)})</span>
            </p>
            <Button isPressed={stands === mark.entry} onPress={() => setStands(mark.entry)}>
              {stands === mark.entry ? words.stands() : words.letStand()}
            </Button>
          </li>
        ))}
      </ul>
      {stands !== undefined && (
        <>
          <TextField label={words.whySettle()} value={reason} onChange={setReason} />
          <Button isDisabled={reason.trim() === ""} onPress={settle}>
            {words.settle()}
          </Button>
        </>
      )}
      <ErrorBox error={saving.error} title={words.notSettled()} />
    </Notice>
  );
}
