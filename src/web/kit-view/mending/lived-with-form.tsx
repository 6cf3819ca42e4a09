import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, TextField } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { useSaving } from "#web/act/use-saving.ts";
import { useMending, type ActingOnFinding } from "./about-finding.ts";

interface Said {
  readonly name: string;
  readonly limit: string;
  readonly until?: string;
}

/** Lived with: a name that answers for it, the limit a vessel must hear, and the day it ends. */
export function LivedWithForm({ at, acts, finding }: ActingOnFinding) {
  const words = useWords("mending");
  const saving = useSaving();
  const empty: Said = { name: at.view.me.name, limit: finding.limit ?? "" };
  const kept = useMending(finding, "lived-with", empty);
  const { name, limit, until } = kept.value;
  const change = (said: Partial<Said>) => kept.change({ ...kept.value, ...said });
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
        label={words.who()}
        value={name}
        onChange={(text) => change({ name: text })}
        {...(tried && name.trim() === "" && { fault: words.nameSomebody() })}
      />
      <TextField
        label={words.limit()}
        hint={words.limitHint()}
        value={limit}
        onChange={(text) => change({ limit: text })}
        {...(tried && limit.trim() === "" && { fault: words.stateLimit() })}
      />
      <DateField
        label={words.until()}
        value={until}
        onChange={(day) => kept.change({ name, limit, ...(day !== undefined && { until: day }) })}
        mayBeMonth={false}
        hint={words.untilHint()}
        {...(tried && until === undefined && { fault: words.chooseDay() })}
      />
      <ErrorBox error={saving.error} title={words.notSaved()} />
      <Button kind="primary" tone="grave" wide onPress={save}>
        {words.liveWith()}
      </Button>
    </>
  );
}
