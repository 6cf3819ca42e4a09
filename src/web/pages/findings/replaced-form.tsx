import { useState } from "react";
import { itemNamed } from "#kit";
import type { Fitted } from "#readiness";
import { Button, DateField, ErrorBox, NumberField, TextField } from "../../parts/index.ts";
import { useSaving } from "../turnaround/use-saving.ts";
import type { ActingOnFinding } from "./about-finding.ts";

/** Replaced: with which part, how many, and the date it carries. */
export function ReplacedForm({ at, acts, finding }: ActingOnFinding) {
  const item = itemNamed(at.pattern, finding.item);
  const needsDate = item?.life.kind === "printed";
  const saving = useSaving();
  const [part, setPart] = useState(item?.part ?? item?.name ?? "");
  const [quantity, setQuantity] = useState<number>();
  const [printed, setPrinted] = useState<string>();
  const [tried, setTried] = useState(false);
  const save = () => {
    setTried(true);
    if (part.trim() === "" || quantity === undefined || (needsDate && printed === undefined)) return;
    const dated = printed === undefined ? {} : { printed };
    const fitted: Fitted = { item: finding.item, fitted: at.view.today, quantity, ...dated };
    const remedy = { finding: finding.id, how: "replaced", part: part.trim(), quantity, fitted } as const;
    void saving.save(() => acts.remedy(remedy));
  };
  return (
    <>
      <TextField
        label="With which part"
        value={part}
        onChange={setPart}
        {...(tried && part.trim() === "" && { fault: "Name the part." })}
      />
      <NumberField
        label="How many"
        value={quantity}
        onChange={setQuantity}
        least={1}
        {...(tried && quantity === undefined && { fault: "Write how many." })}
      />
      {needsDate && (
        <DateField
          label="Date printed on it"
          value={printed}
          onChange={setPrinted}
          {...(tried && printed === undefined && { fault: "Read the date printed on the new one." })}
        />
      )}
      <ErrorBox error={saving.error} title="Not saved" />
      <Button kind="primary" wide onPress={save}>
        Replaced today: now prove it
      </Button>
    </>
  );
}
