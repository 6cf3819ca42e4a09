import { useState } from "react";
import { Button, ErrorBox, TextField } from "#web/parts/index.ts";
import { useSaving } from "#web/act/use-saving.ts";
import type { ActingOnFinding } from "./about-finding.ts";

/** Mended: how, in words. */
export function MendedForm({ acts, finding }: ActingOnFinding) {
  const saving = useSaving();
  const [note, setNote] = useState("");
  const [missing, setMissing] = useState(false);
  const save = () => {
    setMissing(note.trim() === "");
    if (note.trim() === "") return;
    void saving.save(() => acts.remedy({ finding: finding.id, how: "mended", note: note.trim() }));
  };
  return (
    <>
      <TextField
        label="How was it mended?"
        value={note}
        onChange={setNote}
        isLong
        {...(missing && { fault: "Say how, in a few words." })}
      />
      <ErrorBox error={saving.error} title="Not saved" />
      <Button kind="primary" wide onPress={save}>
        Mended: now prove it
      </Button>
    </>
  );
}
