import { useWords } from "#web/language/index.ts";
import type { CasualtySituation } from "#readiness";
import { changeCasualty } from "#station";
import { useState } from "react";
import { Button, TextField } from "#web/parts/index.ts";
import { useSheet } from "#web/pages/casualty/sheet/use-sheet.ts";
import { changedSituation, SITUATION_FIELDS, SITUATION_HINTS, SITUATION_LIMITS } from "./situation.ts";

/** Where she is by now: she drifts, the tide turns, and other stations call in. What stood before stays on the timeline. */
export function SituationNow() {
  const words = useWords("launchTold");
  const told = useWords("casualtyTold");
  const { casualty, write, isBusy } = useSheet();
  const [typed, setTyped] = useState<CasualtySituation>({});
  const stands = casualty.situation ?? {};
  const changed = changedSituation(stands, typed);
  const save = async () => {
    if (!changed) return;
    if (await write(words.wroteWhere(), (doing, now) => changeCasualty(doing, now, { situation: changed })))
      setTyped({});
  };
  return (
    <details className="casualty-more">
      <summary>{words.whereAndKits()}</summary>
      {SITUATION_FIELDS.map((id) => (
        <TextField
          key={id}
          label={told[id]()}
          hint={words[SITUATION_HINTS[id]]()}
          value={typed[id] ?? stands[id] ?? ""}
          onChange={(text) => setTyped({ ...typed, [id]: text })}
          limit={SITUATION_LIMITS[id]}
        />
      ))}
      <Button wide isBusy={isBusy} isDisabled={!changed} onPress={() => void save()}>
        {words.writeWhere()}
      </Button>
    </details>
  );
}
