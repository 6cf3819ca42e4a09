import { useState } from "react";
import type { Remedy } from "#readiness";
import { Choice } from "../../parts/index.ts";
import type { KitActs } from "../turnaround/acts.ts";
import type { AboutFinding } from "./finding-view.tsx";
import { LivedWithForm } from "./lived-with-form.tsx";
import { MendedForm } from "./mended-form.tsx";
import { ReplacedForm } from "./replaced-form.tsx";

const WAYS: readonly { readonly value: Remedy["how"]; readonly label: string; readonly note: string }[] = [
  { value: "mended", label: "Mended", note: "The same thing, put right." },
  { value: "replaced", label: "Replaced", note: "With a part: which, and how many." },
  { value: "lived-with", label: "Lived with", note: "By somebody named, under a stated limit, until a day." },
];

export interface RemedyFormProps extends AboutFinding {
  readonly acts: KitActs;
}

/** What was done about a finding: mended, replaced, or lived with. */
export function RemedyForm(props: RemedyFormProps) {
  const [how, setHow] = useState<Remedy["how"]>();
  return (
    <div className="finding-form">
      <Choice label="What was done?" options={WAYS} value={how} onChange={setHow} />
      {how === "mended" && <MendedForm {...props} />}
      {how === "replaced" && <ReplacedForm {...props} />}
      {how === "lived-with" && <LivedWithForm {...props} />}
    </div>
  );
}
