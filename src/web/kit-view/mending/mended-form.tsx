import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, TextField } from "#web/parts/index.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { useMending, type ActingOnFinding } from "./about-finding.ts";

/** Mended: how, in words. */
export function MendedForm({ acts, finding }: ActingOnFinding) {
  const words = useWords("mending");
  const saving = useSaving();
  const kept = useMending(finding, "mended", { note: "" });
  const { note } = kept.value;
  const [missing, setMissing] = useState(false);
  const save = () => {
    setMissing(note.trim() === "");
    if (note.trim() === "") return;
    void saving.save(() => acts.remedy({ finding: finding.id, how: "mended", note: note.trim() }));
  };
  return (
    <>
      <TextField
        label={words.howMended()}
        value={note}
        onChange={(text) => kept.change({ note: text })}
        isLong
        hint={words.mendedHint()}
        {...(missing && { fault: words.sayHow() })}
      />
      <ErrorBox error={saving.error} title={words.notSaved()} />
      <Button kind="primary" wide onPress={save}>
        {words.mendedProve()}
      </Button>
    </>
  );
}
