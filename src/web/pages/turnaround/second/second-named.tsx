import type { SecondSaid } from "#readiness";
import { strikeEntry } from "#station";
import { useState } from "react";
import { doingOf, useRecorder } from "../../../device/index.ts";
import { Button, ButtonRow } from "../../../parts/index.ts";
import { sayKind } from "../../../parts/words/entry-words.ts";
import type { OpenKit } from "../../../kit-view/at-hand.ts";
import { StrikeDialog } from "../../../kit-view/strike-dialog.tsx";

/** Who sees the line done, by name, or why nobody does; taken back by striking it, with a reason. */
export function SecondNamed({ open, said }: { readonly open: OpenKit; readonly said: SecondSaid }) {
  const recorder = useRecorder();
  const [striking, setStriking] = useState(false);
  const entry = open.view.entriesOf(`kit:${open.kit.id}`).find(({ id }) => id === said.entry);
  const { qualification, second, note } = said;
  return (
    <section className="second-named" aria-label={`${qualification.name}: who sees it done`}>
      <p>
        {second ? "Second person: " : "Nobody sees it done: "}
        <strong>{second?.name ?? note}</strong> <span className="quiet">({qualification.name})</span>
      </p>
      {entry && (
        <ButtonRow>
          <Button onPress={() => setStriking(true)} label={`Undo: ${qualification.name}, ${second?.name ?? "alone"}`}>
            Undo
          </Button>
        </ButtonRow>
      )}
      {entry && striking && (
        <StrikeDialog
          what={sayKind(entry.kind)}
          judge={(reason) => strikeEntry(doingOf(open.view), entry, reason)}
          onStrike={(reason) => recorder.strike(entry, reason)}
          onClose={() => setStriking(false)}
        />
      )}
    </section>
  );
}
