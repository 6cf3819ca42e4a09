import { useState } from "react";
import { Button, ErrorBox, TextField } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { useSaving } from "#web/act/use-saving.ts";
import type { ActingOnFinding } from "./about-finding.ts";

/** Lived with: a name that answers for it, the limit a vessel must hear, and the day it ends. */
export function LivedWithForm({ at, acts, finding }: ActingOnFinding) {
  const saving = useSaving();
  const [name, setName] = useState(at.view.me.name);
  const [limit, setLimit] = useState(finding.limit ?? "");
  const [until, setUntil] = useState<string>();
  const [tried, setTried] = useState(false);
  const save = () => {
    setTried(true);
    if (name.trim() === "" || limit.trim() === "" || until === undefined) return;
    const remedy = { finding: finding.id, how: "lived-with", name: name.trim(), limit: limit.trim(), until } as const;
    void saving.save(() => acts.remedy(remedy));
  };
  return (
    <>
      <TextField
        label="Who answers for it"
        value={name}
        onChange={setName}
        {...(tried && name.trim() === "" && { fault: "Name somebody." })}
      />
      <TextField
        label="Under which limit"
        hint="As a vessel taking the kit should hear it."
        value={limit}
        onChange={setLimit}
        {...(tried && limit.trim() === "" && { fault: "State the limit." })}
      />
      <DateField
        label="Until"
        value={until}
        onChange={setUntil}
        mayBeMonth={false}
        hint="The day somebody looks at it again."
        {...(tried && until === undefined && { fault: "Choose a day." })}
      />
      <ErrorBox error={saving.error} title="Not saved" />
      <Button kind="primary" tone="grave" wide onPress={save}>
        Live with it
      </Button>
    </>
  );
}
