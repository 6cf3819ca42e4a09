import { useState } from "react";
import { patternKey } from "#kit";
import type { Bodies } from "#readiness";
import { Button, ButtonRow, ErrorBox, Notice, TextField } from "#web/parts/index.ts";
import type { AtStep } from "../runner/at-step.ts";
import { useSaving } from "#web/act/use-saving.ts";

type What = Bodies["step-reported"]["what"];

const WORDS: Readonly<Record<What, string>> = {
  wrong: "This line is wrong",
  impossible: "It cannot be done",
  unclear: "It is unclear",
};

/** Tells the pattern's owner in one tap that a line is wrong, impossible or unclear; a note may follow. */
export function ReportStep({ open, acts, step }: AtStep) {
  const saving = useSaving();
  const [sent, setSent] = useState<What>();
  const report = async (what: What, note?: string) => {
    const body = { step: step.id, what, kit: open.kit.id, ...(note ? { note } : {}) };
    if (await saving.save(() => acts.report(patternKey(open.pattern), body))) setSent(what);
  };
  return (
    <details className="extras">
      <summary>Report this line to the pattern&rsquo;s owner</summary>
      {sent === undefined ? (
        <ButtonRow>
          {(Object.keys(WORDS) as What[]).map((what) => (
            <Button key={what} onPress={() => void report(what)}>
              {WORDS[what]}
            </Button>
          ))}
        </ButtonRow>
      ) : (
        <Reported what={sent} onNote={(note) => void report(sent, note)} />
      )}
      <ErrorBox error={saving.error} title="Not reported" />
    </details>
  );
}

interface ReportedProps {
  readonly what: What;
  readonly onNote: (note: string) => void;
}

function Reported({ what, onNote }: ReportedProps) {
  const [note, setNote] = useState("");
  const [added, setAdded] = useState(false);
  return (
    <Notice title={`Reported: ${WORDS[what].toLowerCase()}`} isNews>
      {!added && (
        <>
          <TextField label="Note, if you wish" value={note} onChange={setNote} isLong />
          <Button isDisabled={note.trim() === ""} onPress={() => (setAdded(true), onNote(note.trim()))}>
            Add the note
          </Button>
        </>
      )}
    </Notice>
  );
}
