import { useState } from "react";
import type { Words } from "#words";
import { patternKey } from "#kit";
import type { Bodies } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonRow, ErrorBox, Notice, TextField } from "#web/parts/index.ts";
import type { AtStep } from "../runner/at-step.ts";
import { useSaving } from "#web/act/use-saving.ts";

type What = Bodies["step-reported"]["what"];

const REPORTS: readonly What[] = ["wrong", "impossible", "unclear"];

function sayReport(what: What, words: Words["turnaroundFit"]): string {
  const said = { wrong: words.lineWrong, impossible: words.lineImpossible, unclear: words.lineUnclear };
  return said[what]();
}

/** Tells the pattern's owner in one tap that a line is wrong, impossible or unclear; a note may follow. */
export function ReportStep({ open, acts, step }: AtStep) {
  const saving = useSaving();
  const words = useWords("turnaroundFit");
  const [sent, setSent] = useState<What>();
  const report = async (what: What, note?: string) => {
    const body = { step: step.id, what, kit: open.kit.id, ...(note ? { note } : {}) };
    if (await saving.save(() => acts.report(patternKey(open.pattern), body))) setSent(what);
  };
  return (
    <details className="extras">
      <summary>{words.report()}</summary>
      {sent === undefined ? (
        <ButtonRow>
          {REPORTS.map((what) => (
            <Button key={what} onPress={() => void report(what)}>
              {sayReport(what, words)}
            </Button>
          ))}
        </ButtonRow>
      ) : (
        <Reported what={sent} onNote={(note) => void report(sent, note)} />
      )}
      <ErrorBox error={saving.error} title={words.notReported()} />
    </details>
  );
}

interface ReportedProps {
  readonly what: What;
  readonly onNote: (note: string) => void;
}

function Reported({ what, onNote }: ReportedProps) {
  const [note, setNote] = useState("");
  const words = useWords("turnaroundFit");
  const [added, setAdded] = useState(false);
  return (
    <Notice title={words.reported({ what: sayReport(what, words).toLowerCase() })} isNews>
      {!added && (
        <>
          <TextField label={words.noteIfWished()} value={note} onChange={setNote} isLong />
          <Button isDisabled={note.trim() === ""} onPress={() => (setAdded(true), onNote(note.trim()))}>
            {words.addNote()}
          </Button>
        </>
      )}
    </Notice>
  );
}
