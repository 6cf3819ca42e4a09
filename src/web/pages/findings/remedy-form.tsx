import { useState } from "react";
import type { Remedy } from "#readiness";
import { Choice } from "../../parts/index.ts";
import type { ActingOnFinding } from "./about-finding.ts";
import { LivedWithForm } from "./lived-with-form.tsx";
import { MendedForm } from "./mended-form.tsx";
import { ReplacedForm } from "./replaced-form.tsx";

const WAYS: readonly { readonly value: Remedy["how"]; readonly label: string; readonly note: string }[] = [
  { value: "mended", label: "Mended", note: "The same thing, put right." },
  { value: "replaced", label: "Replaced", note: "With a part: which, and how many." },
  { value: "lived-with", label: "Lived with", note: "By somebody named, under a stated limit, until a day." },
];

/** What was done about a finding: mended, replaced, or lived with. */
export function RemedyForm(props: ActingOnFinding) {
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
